import { signedIn, whoIsSignedIn, type SignedIn } from '@larderbook/contracts';
import { queryOptions, useQuery, type QueryClient } from '@tanstack/react-query';
import { ApiProblem } from './api-problem';
import { call } from './client';
import { speakTo } from './language';

const place = 'larderbook.signed-in';
const key = [whoIsSignedIn.path];

/** `expired`: the server no longer takes this sign-in; entries are still kept, and sent after signing in again. */
export type Session = SignedIn & { expired: boolean };

/**
 * Remembered, so that a tablet started without a signal, or one whose sign-in ran out in the middle of a lot, still
 * knows whose entries it keeps.
 */
export const session = queryOptions<Session | null>({
  queryKey: key,
  queryFn: async ({ signal, client }) => {
    if (isNobodyHere()) return null;
    try {
      const who = await call(whoIsSignedIn, {}, signal);
      remember(who);
      if (!isSame(client.getQueryData<Session>(key), who)) void forgetOthers(client); // signed in in another tab
      return { ...who, expired: false };
    } catch (error) {
      if (!(error instanceof ApiProblem) || error.status !== 401) throw error;
      const before = remembered();
      return before ? { ...before, expired: true } : null;
    }
  },
  initialData: () => {
    const before = remembered();
    return before && { ...before, expired: false };
  },
  initialDataUpdatedAt: 0,
});

/** `null` when nobody is signed in, `undefined` while it is not known. */
export const useSession = (): Session | null | undefined => useQuery(session).data;

/** Entries are kept under this name from now on, and nothing the last person saw is shown. */
export function enter(queries: QueryClient, who: SignedIn): void {
  remember(who);
  queries.clear();
  const entered: Session = { ...who, expired: false };
  queries.setQueryData(key, entered);
}

/** The same person, in another language. */
export function update(queries: QueryClient, who: SignedIn): void {
  remember(who);
  queries.setQueryData<Session>(key, { ...who, expired: false });
}

export function leave(queries: QueryClient): void {
  remember(null);
  queries.clear();
  queries.setQueryData(key, null);
}

/** Whether this tab shows what the person saw whom the device remembers. */
export const isShownHere = (queries: QueryClient): boolean => isSame(queries.getQueryData<Session>(key), remembered());

const isSame = (one: SignedIn | null | undefined, other: SignedIn | undefined): boolean =>
  one?.personId === other?.personId && one?.establishmentId === other?.establishmentId;

const forgetOthers = (queries: QueryClient) => queries.resetQueries({ predicate: ({ queryKey }) => queryKey[0] !== key[0] });

function remember(who: SignedIn | null): void {
  if (who) localStorage.setItem(place, JSON.stringify(who));
  else localStorage.removeItem(place);
  speakTo(who?.language);
}

/** Nobody signed in on this device, or whoever did signed out: there is nothing to ask the server. */
const isNobodyHere = (): boolean => localStorage.getItem(place) === null;

/** Who was signed in when the device last knew. */
export function remembered(): SignedIn | undefined {
  try {
    return signedIn.parse(JSON.parse(localStorage.getItem(place) ?? 'null'));
  } catch {
    return undefined; // nobody yet, or kept by a version that wrote it otherwise
  }
}
