import type { ProblemBody } from '@larderbook/contracts';
import { ApiProblem } from '../api/api-problem';
import type { Entry, OutboxStore } from './entry';

/** The server's answer to one entry. */
export type Outcome =
  | { id: string; what: string; state: 'sent'; path: string; reply: unknown }
  | { id: string; what: string; state: 'parked'; problem: ProblemBody };

/** Only `empty` means that nothing waits. */
export type PauseReason = 'empty' | 'no-connection' | 'sign-in' | 'server-failed' | 'device-failed';

export type Sending = {
  store: OutboxStore;
  deliver: (entry: Entry) => Promise<unknown>;
  tell: (outcome: Outcome) => void;
  /** Another person's entries wait for that person. */
  mayDeliver: (entry: Entry) => boolean;
};

/** After so many failures of the server, the entries behind this one no longer wait for it. */
const failuresBeforeSkipping = 3;

/**
 * Oldest first, one at a time. An entry leaves the store only by the server's 2xx; a refusal parks it; everything else
 * leaves it waiting.
 */
export async function sendWaiting({ store, deliver, tell, mayDeliver }: Sending): Promise<PauseReason> {
  const skipped = new Set<string>();
  for (;;) {
    const waiting = (await store.all()).filter(({ state, id }) => state !== 'parked' && !skipped.has(id));
    const entry = waiting.find(mayDeliver);
    if (!entry) return pauseReason(waiting, skipped);

    await store.change(entry.id, { state: 'sending' });
    const result = await attempt(deliver, entry);
    if (result.kind === 'sent') {
      await store.remove(entry.id);
      tell({ id: entry.id, what: entry.what, state: 'sent', path: entry.path, reply: result.reply });
    } else if (result.kind === 'refused') {
      const { code, title, detail } = result.problem;
      await store.change(entry.id, { state: 'parked', problem: { code, title, detail } });
      tell({ id: entry.id, what: entry.what, state: 'parked', problem: result.problem });
    } else {
      const failures = entry.failures + (result.kind === 'server-failed' ? 1 : 0);
      await store.change(entry.id, { state: 'waiting', failures });
      if (result.kind !== 'server-failed' || failures < failuresBeforeSkipping || skipped.size > 0) return result.kind;
      skipped.add(entry.id);
    }
  }
}

function pauseReason(waiting: Entry[], skipped: Set<string>): PauseReason {
  if (skipped.size > 0) return 'server-failed'; // to be tried again, whoever else's wait
  return waiting.length > 0 ? 'sign-in' : 'empty'; // what waits is another person's
}

type Attempt =
  | { kind: 'sent'; reply: unknown }
  | { kind: 'refused'; problem: ProblemBody }
  | { kind: 'no-connection' | 'sign-in' | 'server-failed' };

async function attempt(deliver: Sending['deliver'], entry: Entry): Promise<Attempt> {
  try {
    return { kind: 'sent', reply: await deliver(entry) };
  } catch (error) {
    if (!(error instanceof ApiProblem)) return { kind: 'no-connection' };
    if (error.status === 401) return { kind: 'sign-in' };
    const isTemporary = error.status >= 500 || [408, 425, 429].includes(error.status); // not about the entry: it may go later
    return isTemporary ? { kind: 'server-failed' } : { kind: 'refused', problem: error.problem };
  }
}
