import type { Disposition } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { madeBy, type PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { sayKeptWeight } from '../platform/kept-weight';

const everyPart = {
  speaksFor: {
    select: { deviation: { select: { id: true, number: true } } },
    orderBy: { deviation: { number: 'asc' } },
  },
  destructions: true,
} satisfies Prisma.DispositionInclude;
type Row = Prisma.DispositionGetPayload<{ include: typeof everyPart }>;
/** Those that speak for these deviations, or those whose product is still to be destroyed. */
type Which = { deviationIds: readonly string[] } | { toDestroy: true };

/** Product that such a decision is about is destroyed. */
export const isDestroyed = (decision: string): boolean => decision === 'condemn' || decision === 'recall';

/** Decisions, in the order in which they were made. */
export async function dispositionsFor(tx: Tx, which: Which, names: PersonNames): Promise<Disposition[]> {
  const where: Prisma.DispositionWhereInput =
    'toDestroy' in which
      ? { decision: { in: ['condemn', 'recall'] }, destructions: { none: {} } }
      : { speaksFor: { some: { deviationId: { in: [...which.deviationIds] } } } };
  const orderBy: Prisma.DispositionOrderByWithRelationInput[] = [{ recordedAt: 'asc' }, { id: 'asc' }];
  const rows = await tx.disposition.findMany({ where, include: everyPart, orderBy });
  const codes = await codesOf(tx, rows);
  return rows.map((row) => toDisposition(row, codes, names));
}

async function codesOf(tx: Tx, rows: readonly Row[]): Promise<ReadonlyMap<string, string>> {
  const ids = rows.flatMap(({ lotId, receiptId }) => lotId ?? receiptId ?? []);
  if (ids.length === 0) return new Map();
  const found = await tx.$queryRaw<{ id: string; code: string }[]>`
    SELECT id, code FROM lot WHERE id = ANY(${ids}::uuid[])
    UNION ALL SELECT id, code FROM receipt WHERE id = ANY(${ids}::uuid[])`;
  return new Map(found.map(({ id, code }) => [id, code]));
}

function toDisposition(row: Row, codes: ReadonlyMap<string, string>, names: PersonNames): Disposition {
  const { lotId, receiptId, decision, reason, basis, destructions: [destroyed] } = row;
  const { name: by, at } = madeBy(row, names);
  return {
    dispositionId: row.id,
    decision: decision as Disposition['decision'],
    lotId: lotId ?? undefined,
    receiptId: receiptId ?? undefined,
    code: codes.get(lotId ?? receiptId ?? '') ?? '',
    weight: sayKeptWeight(row),
    reason,
    basis: (basis as Disposition['basis'] | null) ?? undefined,
    speaksFor: row.speaksFor.map(({ deviation }) => ({ deviationId: deviation.id, number: deviation.number })),
    by,
    at,
    toDestroy: isDestroyed(decision) && !destroyed,
    destruction: destroyed && destructionOf(destroyed, names),
  };
}

function destructionOf(row: Row['destructions'][number], names: PersonNames): NonNullable<Disposition['destruction']> {
  const { name: by, at, recordedAt } = madeBy(row, names);
  return { destructionId: row.id, method: row.method, by, at, recordedAt };
}
