import type { Disposition } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { madeBy, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { keptWeightOf } from '../platform/kept-weight';
import { voidingOf } from './voiding-of';

const everyPart = {
  speaksFor: {
    select: { deviation: { select: { id: true, number: true } } },
    orderBy: { deviation: { number: 'asc' } },
  },
  destructions: { orderBy: { seq: 'asc' } },
} satisfies Prisma.DispositionInclude;
type Row = Prisma.DispositionGetPayload<{ include: typeof everyPart }>;
/** `toDestroy` selects decisions that count and whose product is not yet destroyed. */
type Which = { deviationIds: readonly string[] } | { toDestroy: true };

export const isDestroyed = (decision: string): boolean => decision === 'condemn' || decision === 'recall';

/** Oldest first. Only a query by deviation includes voided ones. */
export async function dispositionsFor(tx: Tx, which: Which, names: PersonNames): Promise<Disposition[]> {
  const where: Prisma.DispositionWhereInput =
    'toDestroy' in which
      ? { id: { in: await toBeDestroyed(tx) } }
      : { voided: null, speaksFor: { some: { deviationId: { in: [...which.deviationIds] } } } };
  const orderBy: Prisma.DispositionOrderByWithRelationInput = { seq: 'asc' };
  const rows = await tx.disposition.findMany({ where, include: everyPart, orderBy });
  const codes = await codesOf(tx, rows);
  const voids = await tx.disposition.findMany({ where: { amendsId: { in: rows.map(({ id }) => id) } } });
  return rows.map((row) => toDisposition(row, { codes, names, voided: voids.find(({ amendsId }) => amendsId === row.id) }));
}

async function toBeDestroyed(tx: Tx): Promise<string[]> {
  const found = await tx.$queryRaw<{ id: string }[]>`
    SELECT p.id FROM disposition_now p WHERE p.decision IN ('condemn', 'recall')
      AND NOT EXISTS (SELECT FROM destruction_now x WHERE x.disposition_id = p.id)`;
  return found.map(({ id }) => id);
}

async function codesOf(tx: Tx, rows: readonly Row[]): Promise<ReadonlyMap<string, string>> {
  const ids = rows.flatMap(({ lotId, receiptId }) => lotId ?? receiptId ?? []);
  if (ids.length === 0) return new Map();
  const found = await tx.$queryRaw<{ id: string; code: string }[]>`
    SELECT id, code FROM lot WHERE id = ANY(${ids}::uuid[])
    UNION ALL SELECT id, code FROM receipt WHERE id = ANY(${ids}::uuid[])`;
  return new Map(found.map(({ id, code }) => [id, code]));
}

type Told = { codes: ReadonlyMap<string, string>; names: PersonNames; voided?: Parameters<typeof voidingOf>[0] };

function toDisposition(row: Row, { codes, names, voided }: Told): Disposition {
  const { lotId, receiptId, decision, reason, basis } = row;
  const { name: by, at } = madeBy(row, names);
  const { destruction, voidedDestructions } = destructionsOf(row, names);
  return {
    dispositionId: row.id,
    decision: decision as Disposition['decision'],
    lotId: lotId ?? undefined,
    receiptId: receiptId ?? undefined,
    code: codes.get(lotId ?? receiptId ?? '') ?? '',
    weight: keptWeightOf(row),
    reason,
    basis: (basis as Disposition['basis'] | null) ?? undefined,
    speaksFor: row.speaksFor.map(({ deviation }) => ({ deviationId: deviation.id, number: deviation.number })),
    by,
    at,
    toDestroy: isDestroyed(decision) && !voided && !destruction,
    destruction,
    voidedDestructions,
    voided: voided && voidingOf(voided, names),
  };
}

type Destructions = Pick<Disposition, 'destruction' | 'voidedDestructions'>;

function destructionsOf({ destructions }: Row, names: PersonNames): Destructions {
  const voids = new Map(destructions.map((row) => [row.amendsId, row]));
  const made = destructions.filter(({ voided }) => !voided);
  const tell = (row: Row['destructions'][number]) => {
    const { name: by, at, recordedAt } = madeBy(row, names);
    return { destructionId: row.id, method: row.method, by, at, recordedAt };
  };
  const counts = made.find(({ id }) => !voids.has(id));
  return {
    destruction: counts && tell(counts),
    voidedDestructions: made.flatMap((row) => {
      const voided = voids.get(row.id);
      return voided ? [{ ...tell(row), voided: voidingOf(voided, names) }] : [];
    }),
  };
}
