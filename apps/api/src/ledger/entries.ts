import type { LedgerEntry } from '@larderbook/haccp';
import { z } from 'zod';
import type { Tx } from '../platform/database';

/** Each look is a short transaction of its own; a long walk takes many. */
export type Look = <T>(work: (tx: Tx) => Promise<T>) => Promise<T>;

/** `digest` is the one taken when the row was written. */
export type Covered = { digest: string; id: string; table: string };

/** `records` is kept word for word. `covers` is empty when it cannot be read. */
export type ListedEntry = { line: LedgerEntry; records: string; covers: Covered[] };

const batch = 500;

/** Includes `last`. */
export async function* entries(look: Look, establishmentId: string, last: bigint): AsyncGenerator<ListedEntry[]> {
  for (let after = 0n; after < last; ) {
    const where = { establishmentId, seq: { gt: after, lte: last } };
    const found = await look((tx) => tx.ledgerEntry.findMany({ where, orderBy: { seq: 'asc' }, take: batch }));
    if (found.length === 0) return;
    yield found.map(({ establishmentId: establishment, at, seq, records, ...entry }) => ({
      line: { ...entry, establishment, at: at.toISOString(), seq: Number(seq) },
      records,
      covers: read(records),
    }));
    after = found.at(-1)?.seq ?? last;
  }
}

const Records = z.array(z.object({ digest: z.string(), id: z.uuid(), table: z.string() }));

/** Only a forged list cannot be read, and its digest does not fit either. */
function read(records: string): Covered[] {
  try {
    return Records.safeParse(JSON.parse(records)).data ?? [];
  } catch (failure) {
    if (failure instanceof SyntaxError) return [];
    throw failure;
  }
}
