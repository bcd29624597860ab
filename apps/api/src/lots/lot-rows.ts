import type { PlanContent } from '@larderbook/contracts';
import { deviationsBehind, type DeviationBehind } from '../deviations/deviations-behind';
import type { Prisma } from '../generated/prisma/client';
import { productsNow, type ProductNow } from '../plan/products-now';
import type { Tx } from '../platform/database';
import type { Taken } from './judge-reading';
import { lotsHold, type LotHolds } from './lot-holds.queries';
import { lastRecords, type LastRecords } from './order-of-records';
import { whatWentIn, type WentIn } from './what-went-in';

const columns = {
  id: true,
  code: true,
  productId: true,
  formulaId: true,
  planId: true,
  note: true,
  flags: true,
  station: true,
  takenAt: true,
  recordedAt: true,
  recordedBy: true,
  plan: { select: { version: true, content: true } },
  readings: {
    select: {
      id: true,
      controlPointId: true,
      probe: true,
      value: true,
      unit: true,
      answer: true,
      seen: true,
      takenAt: true,
      amendsId: true,
    },
    orderBy: [{ takenAt: 'asc' }, { recordedAt: 'asc' }, { id: 'asc' }],
  },
  stageEnds: { select: { controlPointId: true, takenAt: true } },
  packings: { select: { count: true, shipmentLines: { select: { count: true } } } },
  reviews: {
    select: { id: true, statement: true, soleWorker: true, recordedAt: true, recordedBy: true },
    orderBy: [{ recordedAt: 'desc' }, { id: 'desc' }],
    take: 1,
  },
} satisfies Prisma.LotSelect;
type Row = Prisma.LotGetPayload<{ select: typeof columns }>;

export type ReadingOnLot = Taken & { controlPointId: string; amendsId: string | null };

/** Everything that decides where a lot stands. */
export type LotRows = Omit<Row, 'plan' | 'readings'> & {
  product: ProductNow;
  planVersion: number;
  content: PlanContent;
  /** All readings, corrected ones too, oldest first. */
  readings: ReadingOnLot[];
  wentIn: WentIn;
  holds: LotHolds;
  deviations: DeviationBehind[];
  last: LastRecords;
  /** The ledger line of the latest review. */
  reviewSeq?: bigint;
};

/** Reads these lots in a fixed number of statements, however many they are. Lots that are not there are left out. */
export async function readLots(tx: Tx, lotIds: readonly string[]): Promise<LotRows[]> {
  if (lotIds.length === 0) return [];
  const rows = await tx.lot.findMany({ where: { id: { in: [...lotIds] } }, select: columns });
  const products = await productsNow(tx, [...new Set(rows.map(({ productId }) => productId))]);
  const wentIn = await whatWentIn(tx, lotIds);
  const holds = await lotsHold(tx, lotIds);
  const deviations = await deviationsBehind(tx, lotIds);
  const lastOf = await lastRecords(tx, lotIds);
  const reviewSeqs = await ledgerLines(
    tx,
    rows.flatMap(({ reviews }) => reviews.map(({ id }) => id)),
  );

  return rows.flatMap(({ plan, readings, ...row }) => {
    const [went, held, product] = [wentIn.get(row.id), holds.get(row.id), products.get(row.productId)];
    if (!went || !held || !product) return [];
    return [
      {
        ...row,
        product,
        planVersion: plan.version,
        content: plan.content as PlanContent,
        readings: readings.map((reading) => ({ ...reading, value: reading.value?.toNumber() ?? null })),
        wentIn: went,
        holds: held,
        deviations: deviations.filter(({ lotId }) => lotId === row.id),
        last: lastOf(row.id),
        reviewSeq: reviewSeqs.get(row.reviews[0]?.id ?? ''),
      },
    ];
  });
}

/** Readings that nothing corrects. */
export function readingsThatCount<Reading extends { id: string; amendsId: string | null }>(
  readings: readonly Reading[],
): Reading[] {
  const corrected = new Set(readings.map(({ amendsId }) => amendsId));
  return readings.filter(({ id }) => !corrected.has(id));
}

async function ledgerLines(tx: Tx, ids: string[]): Promise<Map<string, bigint>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.acknowledgement.findMany({ where: { id: { in: ids } }, select: { id: true, seq: true } });
  return new Map(rows.map(({ id, seq }) => [id, seq]));
}
