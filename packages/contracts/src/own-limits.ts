import { forces, productClasses, purposes, waysKnown, type Condition, type LimitRow } from '@larderbook/haccp';
import { z } from 'zod';
import { day, id, name, words } from './fields';
import { conditionOfLimit } from './limit-conditions';
import { printed } from './limit-fields';
import { criticalLimit } from './limits';
import { limitSetHead, limitSetId } from './limit-sets';
import { route } from './route';
import { fault } from './fault';

export const limitCondition = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('product'), among: z.array(z.enum(productClasses)).min(1, fault('choose-at-least-one')) }),
  z.object({ kind: z.literal('place'), among: z.array(z.string().trim().min(1).max(60)).min(1).max(30) }),
  ...conditionOfLimit.options,
]) satisfies z.ZodType<Condition>;

/** As exactly as it is known. The rules check that it exists. */
const since = z.string().regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, fault('date-year-month-day'));

/** The same id in two sets means the same matter. */
export const ownLimitRow = z.object({
  rowId: z
    .string()
    .max(80)
    .regex(/^[a-z0-9.]+(-[a-z0-9.]+)*$/, fault('small-letters')),
  title: name,
  purpose: z.enum(purposes, fault('what-it-is-about')),
  limit: criticalLimit,
  paragraph: z.string().trim().min(1, fault('where-support-is-filed')).max(300),
  force: z.enum(forces, fault('what-it-weighs')),
  known: z.enum(waysKnown, fault('how-it-is-known')),
  validFrom: since,
  validUntil: since.optional(),
  conditions: z.array(limitCondition).max(12),
  /** Pairs that a published source prints off the true conversion. */
  printedOdd: z.array(printed).max(60).optional(),
  /** Only some rows of a published table were read. */
  isPartial: z.boolean().optional(),
  note: words().optional(),
}) satisfies z.ZodType<Omit<LimitRow, 'id' | 'isDefault'> & { rowId: string }>;
export type OwnLimitRow = z.output<typeof ownLimitRow>;

export const recordOwnLimits = route({
  method: 'PUT',
  path: '/own-limit-sets/:ownSetId',
  roles: ['owner'],
  summary: 'Write an edition of one’s own limits; it may take the place of an earlier one and changes no plan',
  body: z.object({
    title: name,
    edition: z
      .string()
      .trim()
      .min(1, fault('name-the-edition'))
      .max(40, fault('at-most-characters', { most: 40 })),
    validFrom: day,
    replaces: id.optional(),
    rows: z.array(ownLimitRow).max(200, fault('at-most-figures', { most: 200 })),
  }),
  returns: limitSetHead,
  problems: ['not-found', 'limit-set-faulty', 'edition-replaced-already', 'sent-differently'],
});
export const rowsToTake = route({
  method: 'GET',
  path: '/limit-set-rows-to-take',
  roles: ['owner'],
  summary: 'The figures of a set as an edition of one’s own would carry them',
  query: z.object({ set: limitSetId }),
  returns: z.object({ rows: z.array(ownLimitRow) }),
  problems: ['no-such-set'],
});
