import { publishedJurisdictions } from '@larderbook/haccp';
import { z } from 'zod';
import { everyone, roles, route } from './route';
import { id, language, name, sentence } from './fields';
import { fault } from './fault';

const role = z.enum(roles);
export const userName = z
  .string()
  .trim()
  .toLowerCase()
  .regex(/^[a-z0-9][a-z0-9._-]{2,39}$/, fault('user-name-letters'));
const password = z
  .string()
  .min(10, fault('password-length'))
  .max(128, fault('at-most-characters', { most: 128 }));

/**
 * A region knows its summer time. An offset is refused: Intl reads "+05:30" as east of Greenwich, PostgreSQL as west.
 */
const isRegion = (zone: string): boolean => {
  if (!/^(UTC|[A-Z][A-Za-z]*(\/[A-Za-z_-]+)+)$/.test(zone)) return false;
  try {
    return Boolean(new Intl.DateTimeFormat('en', { timeZone: zone }));
  } catch {
    return false;
  }
};
const timeZone = z.string().refine(isRegion, fault('zone-by-region'));

export const establishmentFields = z.object({
  name,
  number: z.string().trim().max(40),
  address: z.string().trim().max(400),
  timeZone,
  units: z.enum(['US', 'metric']),
  paper: z.enum(['Letter', 'A4']),
  lotCodePattern: z.string().trim().min(1).max(40),
  /** Nothing is assumed of a shop that has not said. */
  jurisdiction: z.enum(publishedJurisdictions).optional(),
  place: z.string().trim().min(1).max(60).optional(),
  /** Without it, the usual edition of the jurisdiction. */
  limitSet: z.string().trim().min(1).max(80).optional(),
});
export type EstablishmentFields = z.output<typeof establishmentFields>;

export const signedIn = z.object({
  personId: z.string(),
  name: z.string(),
  userName: z.string(),
  roles: z.array(role),
  /** Without it, the language of the device. */
  language: language.optional(),
  establishmentId: z.string(),
  demonstration: z.boolean(),
  establishment: establishmentFields,
});
export type SignedIn = z.output<typeof signedIn>;

export const firstRun = route({
  method: 'GET',
  path: '/first-run',
  summary: 'Whether a shop is set up and whether the demonstration shop is open',
  roles: 'anyone',
  returns: z.object({ hasShop: z.boolean(), hasDemonstration: z.boolean() }),
  problems: [],
});

export const setUpShop = route({
  method: 'PUT',
  path: '/establishments/:establishmentId',
  summary: 'Set up the shop on first start: its owner and its establishment',
  roles: 'anyone',
  body: z.object({ owner: z.object({ personId: id, name, userName, password }), establishment: establishmentFields }),
  returns: signedIn,
  problems: ['already-set-up', 'user-name-taken', 'sent-differently', 'invalid-input'],
});

export const openDemonstration = route({
  method: 'POST',
  path: '/demonstration',
  summary: 'Open the demonstration shop, making it when there is none, and say how to sign in',
  roles: 'anyone',
  returns: z.object({
    signIns: z.array(z.object({ role, name: z.string(), userName: z.string(), password: z.string() })),
    lookAt: z.array(z.string()),
  }),
  problems: [],
});

export const demonstrationProgress = route({
  method: 'GET',
  path: '/demonstration',
  summary: 'How much of the demonstration shop has been made, while it is being made',
  roles: 'anyone',
  /** Both are 0 while no demonstration is being made. */
  returns: z.object({ done: z.number().int(), all: z.number().int() }),
  problems: [],
});

export const signIn = route({
  method: 'POST',
  path: '/session',
  summary: 'Sign in with user name and password',
  roles: 'anyone',
  body: z.object({ userName: z.string().max(200), password: z.string().max(200) }),
  returns: signedIn,
  problems: ['wrong-user-name-or-password', 'too-many-attempts'],
});

export const whoIsSignedIn = route({
  method: 'GET',
  path: '/session',
  summary: 'Who is signed in, and in which establishment',
  roles: everyone,
  returns: signedIn,
  problems: [],
});

export const signOut = route({
  method: 'DELETE',
  path: '/session',
  summary: 'Sign out',
  roles: everyone,
  returns: z.object({}),
  problems: [],
});

export const chooseLanguage = route({
  method: 'POST',
  path: '/session/language',
  summary: 'Choose in which language one is spoken to, on every device',
  roles: everyone,
  body: z.object({ language }),
  returns: signedIn,
  problems: [],
});

export const changePassword = route({
  method: 'POST',
  path: '/session/password',
  summary: 'Change one’s own password; every other session of the person ends',
  roles: everyone,
  body: z.object({ current: z.string().max(200), next: password }),
  returns: z.object({}),
  problems: ['wrong-user-name-or-password', 'too-many-attempts'],
});

const person = z.object({ personId: z.string(), name: z.string(), userName: z.string(), roles: z.array(role), since: z.string() });

export const listPeople = route({
  method: 'GET',
  path: '/people',
  summary: 'Everyone with an account, and what they may do',
  roles: everyone,
  returns: z.object({ people: z.array(person) }),
  problems: [],
});

export const addPerson = route({
  method: 'PUT',
  path: '/people/:personId',
  summary: 'Make an account',
  roles: ['owner'],
  body: z.object({ name, userName, password, roles: z.array(role).min(1, fault('one-role-at-least')) }),
  returns: person,
  problems: ['user-name-taken', 'sent-differently'],
});

export const grantRoles = route({
  method: 'PUT',
  path: '/role-grants/:grantId',
  summary: 'Change what a person may do; no roles means the person has left',
  roles: ['owner'],
  body: z.object({ personId: id, roles: z.array(role) }),
  returns: person,
  problems: ['not-found', 'last-owner', 'sent-differently'],
});

export const resetPassword = route({
  method: 'POST',
  path: '/people/:personId/password',
  summary: 'Give a person a new password; every session of the person ends',
  roles: ['owner'],
  body: z.object({ password }),
  returns: z.object({}),
  problems: ['not-found'],
});

export const changeEstablishment = route({
  method: 'PUT',
  path: '/establishment-details/:detailsId',
  summary: 'Change name, address, units, paper, the lot code pattern, or whose published limits count',
  roles: ['owner'],
  body: establishmentFields.extend({ lotCodePattern: sentence(fault('pattern-such-as')).max(40) }),
  returns: establishmentFields,
  problems: ['sent-differently', 'invalid-input'],
});
