import type { LedgerEntry } from '@larderbook/haccp';
import { z } from 'zod';
import type { Tx } from '../platform/database';

/** One look at the book in a short transaction of its own; a long walk takes many of them. */
export type Look = <T>(work: (tx: Tx) => Promise<T>) => Promise<T>;

/** A row that an entry covers, and the digest it had when it was written. */
export type Covered = { digest: string; id: string; table: string };

/** A line of the chain with its list of rows, word for word. `covers` is empty when the list cannot be read. */
export type ListedEntry = { line: LedgerEntry; records: string; covers: Covered[] };

const batch = 500;

/** The lines of the chain in order, up to and including `last`, a few hundred at a time. */
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

/** Only a forged list cannot be read, and that one does not fit its digest either. */
function read(records: string): Covered[] {
  try {
    return Records.safeParse(JSON.parse(records)).data ?? [];
  } catch (failure) {
    if (failure instanceof SyntaxError) return [];
    throw failure;
  }
}
