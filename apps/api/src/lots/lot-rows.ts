import type { HumidityKept } from '@larderbook/haccp';
import type { PlanContent } from '@larderbook/contracts';
import { deviationsBehind, type DeviationBehind } from '../deviations/deviations-behind';
import type { Prisma } from '../generated/prisma/client';
import { linesOf, type FormulaInUse } from '../products/formula-in-use';
import { itemsNow, type ItemNow } from '../products/items-now';
import { plansById } from '../products/plan-in-force';
import { productsNow, type ProductNow } from '../products/products-now';
import type { Tx } from '../platform/database';
import { clarificationsOf, wordsFrom, type Clarification } from './clarifications.queries';
import { entriesIn } from './entries-in.queries';
import type { Taken } from './judge-reading';
import { weightsOfLots, type LotWeights } from './lot-weights.queries';
import { lastRecords, orderOf, type LastRecords } from './order-of-records';
import { recordsSinceReview, type RecordSince } from './records-since-review.queries';
import { arrivalsOf } from './reading-roots';
import { scalesOf } from './scales-of';
import { adder, type WentIn } from './what-went-in';

const columns = {
  id: true,
  code: true,
  productId: true,
  planId: true,
  note: true,
  flags: true,
  station: true,
  takenAt: true,
  recordedAt: true,
  recordedBy: true,
  formula: {
    select: {
      id: true,
      version: true,
      expectedYieldPercent: true,
      lines: { select: { part: true, itemId: true, percent: true }, orderBy: { position: 'asc' } },
    },
  },
  readings: {
    select: {
      id: true,
      controlPointId: true,
      probe: true,
      value: true,
      unit: true,
      answer: true,
      seen: true,
      humidity: true,
      takenAt: true,
      recordedAt: true,
      amendsId: true,
      voided: true,
    },
    orderBy: [{ takenAt: 'asc' }, { seq: 'asc' }, { id: 'asc' }],
  },
  stageEnds: {
    select: { id: true, rowId: true, controlPointId: true, takenAt: true, recordedAt: true, recordedBy: true, station: true },
  },
  packings: { select: { id: true, count: true, netUnit: true, shipmentLines: { select: { count: true } } } },
  reviews: {
    select: { id: true, statement: true, soleWorker: true, rulesVersion: true, recordedAt: true, recordedBy: true },
    orderBy: { seq: 'desc' },
  },
} satisfies Prisma.LotSelect;
type Row = Prisma.LotGetPayload<{ select: typeof columns }>;

export type ReadingOnLot = Taken & { controlPointId: string; amendsId: string | null; voided: boolean | null };

export type LotRows = Omit<Row, 'formula' | 'readings'> & {
  product: ProductNow;
  planVersion: number;
  content: PlanContent;
  formula: Pick<FormulaInUse, 'formulaId' | 'version' | 'expectedYieldPercent' | 'lines'>;
  /** Items of the formula and of the entries, as described now. */
  items: ReadonlyMap<string, ItemNow>;
  /** Corrected ones included, oldest first. */
  readings: ReadingOnLot[];
  /** Oldest first. */
  clarifications: Clarification[];
  wentIn: WentIn;
  weights: LotWeights;
  deviations: DeviationBehind[];
  last: LastRecords;
  /** Ledger lines behind its curves; only of a lot with a closed deviation. */
  order: ReadonlyMap<string, bigint>;
  /** The reviews, and what was recorded after the first of them. */
  since: RecordSince[];
};

/** The number of statements is fixed, however many lots. Unknown lots are left out. */
export async function readLots(tx: Tx, lotIds: readonly string[]): Promise<LotRows[]> {
  if (lotIds.length === 0) return [];
  const rows = await tx.lot.findMany({ where: { id: { in: [...lotIds] } }, select: columns });
  const plans = await plansById(tx, unique(rows.map(({ planId }) => planId)));
  const products = await productsNow(tx, unique(rows.map(({ productId }) => productId)));
  const entries = await entriesIn(tx, lotIds);
  const inFormulas = rows.flatMap(({ formula }) => formula.lines.map(({ itemId }) => itemId));
  const items = await itemsNow(tx, unique([...inFormulas, ...entries.flatMap(({ itemId }) => itemId ?? [])]));
  const add = adder(entries, items);
  const weights = await weightsOfLots(tx, lotIds);
  const deviations = await deviationsBehind(tx, lotIds);
  const lastOf = await lastRecords(tx, lotIds);
  const reviewed = rows.flatMap(({ id, reviews }) => (reviews.length > 0 ? id : []));
  const since = await recordsSinceReview(tx, reviewed);
  const clarified = await clarificationsOf(tx, lotIds);
  const decided = deviations.filter(({ isOwn, limitId, closedSeq }) => isOwn && limitId !== null && closedSeq !== null);
  const order = await orderOf(tx, unique(decided.map(({ lotId }) => lotId)));

  return rows.flatMap(({ formula, readings, ...row }) => {
    const [plan, product, weighs] = [plans.get(row.planId), products.get(row.productId), weights.get(row.id)];
    if (!plan || !product || !weighs) return [];
    const clarifications = clarified.filter(({ lotId }) => lotId === row.id);
    return [
      {
        ...row,
        product,
        planVersion: plan.version,
        content: plan.content,
        formula: describe(formula, items),
        items,
        readings: asTaken(readings, clarifications),
        clarifications,
        wentIn: { ...add(row.id), scales: scalesOf(plan.content.controlPoints) },
        weights: weighs,
        deviations: deviations.filter(({ lotId }) => lotId === row.id),
        last: lastOf(row.id),
        order,
        since: since.filter(({ lotId }) => lotId === row.id),
      },
    ];
  });
}

function asTaken(readings: Row['readings'], clarifications: readonly Clarification[]): ReadingOnLot[] {
  const [arrivals, words] = [arrivalsOf(readings), wordsFrom(clarifications)];
  return readings.map(({ recordedAt, value, humidity, ...reading }) => ({
    ...reading,
    humidity: humidity as HumidityKept | null,
    value: value?.toNumber() ?? null,
    arrivedAt: reading.answer === null ? arrivals.get(reading.id) : recordedAt,
    keptAt: recordedAt,
    word: words.get(reading.id),
  }));
}

const unique = (ids: string[]): string[] => [...new Set(ids)];

const describe = (
  { id, lines, expectedYieldPercent, ...row }: Row['formula'],
  items: ReadonlyMap<string, ItemNow>,
): LotRows['formula'] => ({
  ...row,
  formulaId: id,
  expectedYieldPercent: expectedYieldPercent.toNumber(),
  lines: linesOf(lines, items),
});

/** Leaves out readings that are corrected, voided, or that void another. */
export function readingsThatCount<Reading extends { id: string; amendsId: string | null; voided: boolean | null }>(
  readings: readonly Reading[],
): Reading[] {
  const corrected = new Set(readings.map(({ amendsId }) => amendsId));
  return readings.filter(({ id, voided }) => !voided && !corrected.has(id));
}
