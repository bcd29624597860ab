import { knownFlags, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { usualPiece } from '@larderbook/haccp';
import { aboutDeviation } from '../deviations/what-it-is-about';
import type { Tx } from '../platform/database';
import { madeBy, type PersonNames } from '../shop/person-names';
import { gramsOf, keptWeightOf } from '../platform/kept-weight';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { doubtsAt } from './doubts-at';
import { correctionsOnLot } from './goods-corrections.queries';
import type { PointOnLot } from './judge-points';
import { readLots, type LotRows } from './lot-rows';
import { readShown, type Shown } from './read-shown';
import { showInputs } from './show-inputs';
import { showPackings, showShipments } from './show-packings';
import { showReviews } from './show-reviews';
import { showReadings, type ReadingsAt } from './show-readings';
import { showTargets } from './show-targets';
import { showWeighings } from './show-weighings';
import { whereItStands, type LotStands } from './where-a-lot-stands';

/** Throws `not-found`. */
export const showLot = async (tx: Tx, lotId: string, now?: Date): Promise<Lot> => (await showLotWithPoints(tx, lotId, now)).lot;

export type LotWithPoints = { lot: Lot; rows: LotRows; points: PointOnLot[] };

/** Throws `not-found`. */
export async function showLotWithPoints(tx: Tx, lotId: string, now?: Date): Promise<LotWithPoints> {
  const [rows] = await readLots(tx, [lotId]);
  const shown = rows && (await readShown(tx, lotId));
  if (!shown) throw new Problem('not-found', told('no-such-lot'));

  const stands = whereItStands(rows, now);
  const corrections = await correctionsOnLot(tx, aboutOf(rows, shown), shown.people);
  return { lot: { ...toLot(rows, shown, stands), corrections }, rows, points: stands.points };
}

const aboutOf = ({ id, content }: LotRows, { inputs, weighings }: Shown) => ({
  id,
  points: content.controlPoints,
  receiptIds: [...inputs, ...weighings].flatMap(({ receipt }) => receipt?.id ?? []),
});

function toLot(rows: LotRows, shown: Shown, stands: LotStands): Omit<Lot, 'corrections'> {
  const readings = showReadings(rows, shown);
  const { formulaId, version, expectedYieldPercent } = rows.formula;
  const reviews = showReviews(rows, stands, shown);
  return {
    ...headOf(rows, stands),
    note: rows.note,
    flags: knownFlags(rows.flags),
    made: madeBy(rows, shown.people),
    formula: { formulaId, version, expectedYieldPercent },
    plan: { planId: rows.planId, version: rows.planVersion, title: rows.content.title },
    useByDays: rows.product.useByDays,
    storage: rows.product.storage,
    usualPiece: usualPiece(rows.product.productClass),
    meatBlockGrams: gramsOf(rows.wentIn.composition.meat),
    inputs: showInputs(shown),
    targets: showTargets(rows),
    weighings: showWeighings(rows, shown),
    unjudged: stands.unjudged.length > 0 ? stands.unjudged : undefined,
    controlPoints: stands.points.map((point) => toControlPoint(point, readings, stageEndOf(rows, point, shown.people))),
    removals: showRemovals(shown),
    packings: showPackings(shown, rows),
    shipments: showShipments(shown),
    deviations: rows.deviations.map(({ deviationId, number, openedWith, isOpen, openedAt }) => ({
      deviationId,
      number,
      description: stands.misses.get(deviationId)?.description ?? aboutDeviation(openedWith),
      open: isOpen,
      openedAt: openedAt.toISOString(),
    })),
    review: reviews.at(-1),
    reviews,
  };
}

export const headOf = (
  rows: LotRows,
  { standing, because, openDeviations, packages, packagesLeft, judgedOtherwise, running, warning }: LotStands,
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
  judgedOtherwise,
  running,
  warning,
});

function toControlPoint(found: PointOnLot, readings: ReadingsAt, stageEnd: ControlPointOnLot['stageEnd']): ControlPointOnLot {
  const { point, stands, isSettled, judged, endedAt, bands, openDeviationId, forecast } = found;
  return {
    controlPoint: point,
    stands,
    settled: isSettled,
    judged,
    readings: readings(point),
    endedAt: endedAt?.toISOString(),
    stageEnd,
    bands,
    openDeviationId,
    doubts: doubtsAt(found),
    forecast,
  };
}

const showRemovals = ({ removals, people }: Shown): Lot['removals'] =>
  removals.map((row) => ({
    removalId: row.id,
    rowId: row.rowId,
    kind: row.kind,
    weight: keptWeightOf(row),
    note: row.note,
    made: madeBy(row, people),
  }));

function stageEndOf({ stageEnds }: LotRows, { point }: PointOnLot, names: PersonNames): ControlPointOnLot['stageEnd'] {
  const end = stageEnds.find(({ controlPointId }) => controlPointId === point.controlPointId);
  return end && { stageEndId: end.id, rowId: end.rowId, made: madeBy(end, names) };
}
