import type { LedgerEntry } from '@larderbook/haccp';
import { z } from 'zod';
import type { Tx } from '../platform/database';
import { sha256 } from './sha256';

/** Each look is a short transaction of its own; a long walk takes many. */
export type Look = <T>(work: (tx: Tx) => Promise<T>) => Promise<T>;

/** A record as it was when it was added: its columns that were not null, as PostgreSQL prints them. */
export type Covered = { id: string; row: Record<string, string>; table: string };

/** A text of a line, word for word as it was digested. */
export type Text = { seq: number; records: string };

const batch = 500;

/** `reply` is what was answered, word for word. */
export type ListedEntry = { line: LedgerEntry; reply: string };

type Row = Omit<LedgerEntry, 'answer' | 'seq'> & { seq: bigint; reply: string };

/** Includes `last`, and a line before the first, which only somebody else can have written. */
export async function* entries(look: Look, establishmentId: string, last: bigint): AsyncGenerator<ListedEntry[]> {
  for (let after: bigint | null = null; after === null || after < last; ) {
    const from: bigint | null = after;
    const found: Row[] = await look(
      (tx) => tx.$queryRaw<Row[]>`
        SELECT id, seq, establishment_id AS establishment, person, station, kind, subject, reply,
          coalesce(to_char(at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'), '') AS at,
          encode(request_digest, 'hex') AS request, encode(digest, 'hex') AS digest,
          encode(previous_hash, 'hex') AS "previousHash", encode(hash, 'hex') AS hash
        FROM ledger_entry WHERE establishment_id = ${establishmentId}::uuid AND seq <= ${last}
          AND (${from}::bigint IS NULL OR seq > ${from}) ORDER BY seq LIMIT ${batch}`,
    );
    if (found.length === 0) return;
    yield found.map(({ reply, seq, ...line }) => ({ line: { ...line, seq: Number(seq), answer: sha256(reply) }, reply }));
    after = found.at(-1)?.seq ?? last;
  }
}

/** Few at a time: a write of thousands of records has long ones. */
const textsAtOnce = 128;

/** The texts of these lines, in order, both included. */
export async function* texts(look: Look, establishmentId: string, first: number, last: number): AsyncGenerator<Text[]> {
  for (let [seq, place] = [first, -1]; ; ) {
    const [line, from] = [BigInt(seq), place];
    const found = await look((tx) =>
      tx.ledgerText.findMany({
        where: { establishmentId, OR: [{ seq: line, place: { gt: from } }, { seq: { gt: line, lte: BigInt(last) } }] },
        orderBy: [{ seq: 'asc' }, { place: 'asc' }],
        take: textsAtOnce,
      }),
    );
    const end = found.at(-1);
    if (!end) return;
    yield found.map(({ seq, records }) => ({ seq: Number(seq), records }));
    [seq, place] = [Number(end.seq), end.place];
  }
}

const Records = z.array(z.object({ id: z.uuid(), row: z.record(z.string(), z.string()), table: z.string() }));

/** Empty where it cannot be read: only a forged text cannot, and its digest does not fit either. */
export function recordsIn(text: string): Covered[] {
  try {
    return Records.safeParse(JSON.parse(text)).data ?? [];
  } catch (failure) {
    if (failure instanceof SyntaxError) return [];
    throw failure;
  }
}
