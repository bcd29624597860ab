import { knownFlags, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { madeBy, personNames, type PersonNames } from '../people/person-names';
import { gramsOf, sayKeptWeight } from '../platform/kept-weight';
import { Problem } from '../platform/problem';
import { formulaById } from '../plan/formula-in-use';
import type { PointOnLot } from './judge-points';
import { readLots, type LotRows } from './lot-rows';
import { showInputs } from './show-inputs';
import { showPackings, showShipments } from './show-packings';
import { showReadings, type ReadingsAt } from './show-readings';
import { showTargets } from './show-targets';
import { showWeighings } from './show-weighings';
import { whereItStands, type LotStands } from './where-a-lot-stands';

/** Everything about one lot, judged as it stands at `now`. Throws `not-found`. */
export async function showLot(tx: Tx, lotId: string, now?: Date): Promise<Lot> {
  const [rows] = await readLots(tx, [lotId]);
  const formula = rows && (await formulaById(tx, rows.formulaId));
  if (!rows || !formula) throw new Problem('not-found', { detail: 'There is no such lot in this shop.' });

  const stands = whereItStands(rows, now);
  const names = await personNames(tx);
  const inputs = await showInputs(tx, lotId, names);
  const readings = await showReadings(tx, rows, names);
  const { formulaId, version, expectedYieldPercent } = formula;
  const packings = await showPackings(tx, rows, names);
  return {
    ...headOf(rows, stands),
    note: rows.note,
    flags: knownFlags(rows.flags),
    made: madeBy(rows, names),
    formula: { formulaId, version, expectedYieldPercent },
    plan: { planId: rows.planId, version: rows.planVersion, title: rows.content.title },
    useByDays: rows.product.useByDays,
    storage: rows.product.storage,
    meatBlockGrams: gramsOf(rows.wentIn.composition.meat),
    inputs: inputs.shown,
    targets: showTargets(formula, rows, inputs.trimmedOf),
    weighings: await showWeighings(tx, lotId, names),
    controlPoints: stands.points.map((point) => toControlPoint(point, readings)),
    removals: await showRemovals(tx, lotId, names),
    packings: packings.shown,
    shipments: showShipments(packings),
    deviations: rows.deviations.map(({ deviationId, number, description, isOpen, openedAt }) => ({
      deviationId,
      number,
      description,
      open: isOpen,
      openedAt: openedAt.toISOString(),
    })),
    review: reviewOf(rows, stands, names),
  };
}

/** What a list shows of a lot. */
export const headOf = (
  rows: LotRows,
  { standing, because, openDeviations, packages, packagesLeft, running }: LotStands,
) => ({
  lotId: rows.id,
  code: rows.code,
  productId: rows.productId,
  productName: rows.product.name,
  startedAt: rows.takenAt.toISOString(),
  standing,
  because,
  openDeviations,
  packages,
  packagesLeft,
  running,
});

const toControlPoint = (
  { point, stands, isSettled, judged, endedAt, bands, openDeviationId }: PointOnLot,
  readings: ReadingsAt,
): ControlPointOnLot => ({
  controlPoint: point,
  stands,
  settled: isSettled,
  judged,
  readings: readings(point),
  endedAt: endedAt?.toISOString(),
  bands,
  openDeviationId,
});

async function showRemovals(tx: Tx, lotId: string, names: PersonNames): Promise<Lot['removals']> {
  const rows = await tx.removal.findMany({ where: { lotId }, orderBy: { takenAt: 'asc' } });
  return rows.map((row) => ({
    removalId: row.id,
    kind: row.kind,
    weight: sayKeptWeight(row),
    note: row.note,
    made: madeBy(row, names),
  }));
}

function reviewOf({ reviews: [review] }: LotRows, { reviewCounts }: LotStands, names: PersonNames): Lot['review'] {
  if (!review) return undefined;
  const { name, at } = madeBy(review, names);
  return {
    reviewId: review.id,
    by: name,
    at,
    statement: review.statement,
    soleWorker: review.soleWorker,
    counts: reviewCounts,
  };
}
