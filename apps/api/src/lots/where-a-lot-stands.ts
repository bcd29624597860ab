import type { Lot, LotHead, Standing } from '@larderbook/contracts';
import { isNegligible, formatMass, type Told } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { tell } from '../platform/tell';
import { clearedSince, type ClearedSince } from './cleared-since';
import { warningOf } from './forecast-warning';
import type { LotWeights } from './lot-weights.queries';
import { isDecided } from './is-settled';
import { judgePoints, type PointOnLot } from './judge-points';
import { missesNow, type MissNow } from './misses-now';
import { readLots, type LotRows } from './lot-rows';
import { toldAll } from './told-worst';
import { judgedOtherwise } from './judged-otherwise';
import { reviewsStand, type ReviewStands } from './taken-back';
import { unjudgedSubstances } from './unjudged-substances';

/** Derived each time, never stored. */
export type LotStands = Pick<LotHead, 'standing' | 'because' | 'openDeviations' | 'packages' | 'packagesLeft' | 'running' | 'warning'> & {
  points: PointOnLot[];
  unjudged: Unjudged[];
  misses: ReadonlyMap<string, MissNow>;
  /** Nothing has taken the latest review back. */
  reviewCounts: boolean;
  /** Oldest first. */
  reviews: ReviewStands[];
  /** Packages still here that the latest review did not see. */
  packedSince: number;
  clearedSince: ClearedSince;
  /** The rules of now judge these otherwise than those of the review. */
  judgedOtherwise: string[];
};

type Unjudged = NonNullable<Lot['unjudged']>[number];

/** Unknown lots are left out. `now` only tells whether a running stage is overdue. */
export async function whereLotsStand(tx: Tx, lotIds: readonly string[], now?: Date): Promise<ReadonlyMap<string, LotStands>> {
  const lots = await readLots(tx, lotIds);
  return new Map(lots.map((rows) => [rows.id, whereItStands(rows, now)]));
}

export function whereItStands(rows: LotRows, now?: Date): LotStands {
  const points = judgePoints(rows, now);
  const unjudged = unjudgedOf(rows);
  const counted = countPackages(rows.packings);
  const reviews = reviewsStand(rows, points);
  const reviewCounts = reviews.length > 0 && reviews.at(-1)?.takenBack === undefined;
  const misses = missesNow(rows, points);
  const cleared = clearedSince(rows.since, reviews);
  const packedSince = reviewCounts ? countPackages(rows.packings.filter(({ id }) => !cleared(id))).packagesLeft : 0;
  const otherwise = reviewCounts && packedSince === 0 ? judgedOtherwise(rows, points) : [];
  return {
    ...stand(rows, { points, unjudged, reviewCounts, reviews, packedSince, misses, judgedOtherwise: otherwise, ...counted }),
    ...counted,
    points,
    unjudged,
    misses,
    reviewCounts,
    reviews,
    packedSince,
    judgedOtherwise: otherwise,
    clearedSince: cleared,
    openDeviations: rows.deviations.filter(({ isOpen }) => isOpen).length,
    running: firstDue(points),
    warning: warningOf(points),
  };
}

type Found = Pick<
  LotStands,
  'points' | 'unjudged' | 'misses' | 'reviewCounts' | 'reviews' | 'packedSince' | 'packages' | 'packagesLeft' | 'judgedOtherwise'
>;
type Stand = { standing: Standing; because: string };

function stand(rows: LotRows, found: Found): Stand {
  const { points, unjudged, misses, reviewCounts, reviews, packedSince, packages, packagesLeft, judgedOtherwise } = found;
  const hold = whyOnHold(rows, misses, packages > packagesLeft);
  if (hold) return { standing: 'on-hold', because: hold };
  const condemned = whyCondemned(rows.weights);
  if (condemned) return { standing: 'condemned', because: condemned };
  const back = reviews.at(-1)?.takenBack;
  if (packages > 0 && packagesLeft === 0)
    return back?.reason
      ? { standing: 'to-review', because: sayTakenBack(back.reason, packages) }
      : { standing: 'shipped', because: `All ${packages} packages have left.${back ? ` ${sayRecorded(back)}` : ''}` };
  if (isUsedUp(rows.weights)) return { standing: 'ended', because: 'Nothing of it is left.' };

  if (isAllToRework(rows.weights))
    return { standing: 'in-work', because: 'All that is left of it was decided to be reworked. Next: put it into a later lot.' };

  const next = undecided(unjudged) ?? (judgedOtherwise.length > 0 ? undefined : whatIsNext(rows, points));
  if (next) return { standing: 'in-work', because: next };
  if (packages === 0) return { standing: 'in-work', because: 'Every control point is met or settled. Next: pack it.' };
  if (reviewCounts && packedSince === 0)
    return {
      standing: 'cleared',
      because: [`The pre-shipment review is signed: ${sayMayShip(rows, packages, packagesLeft)}`, ...sayLookAgain(judgedOtherwise)].join(
        ' ',
      ),
    };
  const again = whyAgain(back, { packedSince, gone: packages - packagesLeft }) ?? 'Next: the pre-shipment review.';
  return { standing: 'to-review', because: `Packed, and every control point is met or settled. ${again}` };
}

/** People decide what newer rules change. */
const sayLookAgain = (names: readonly string[]): string[] =>
  names.length > 0 ? [`By the rules of now ${names.join(', ')} would not be met: look at it again.`] : [];

type Packages = { packedSince: number; gone: number };

function whyAgain(back: ReviewStands['takenBack'], { packedSince, gone }: Packages): string | undefined {
  if (back?.reason) return sayTakenBack(back.reason, gone);
  if (back) return sayRecorded(back);
  return packedSince > 0 ? sayPackedSince(packedSince) : undefined;
}

const sayRecorded = ({ what }: NonNullable<ReviewStands['takenBack']>): string =>
  `${what} after the review was signed. Next: review it again.`;

/** Whatever has left may have left under the review that a person took back. */
function sayTakenBack(reason: string, gone: number): string {
  const recall = gone > 0 ? ` ${gone === 1 ? '1 package has' : `${gone} packages have`} left: consider a recall.` : '';
  return `The review was taken back: ${ended(reason)}${recall} Next: review it again.`;
}

/** A review covers only the records it saw (9 CFR 417.5(c)). */
export const sayPackedSince = (count: number): string =>
  `${count === 1 ? '1 package was' : `${count} packages were`} packed after the review was signed and may not ship. ` +
  'Next: review it again.';

/** Decisions name a weight, not packages, so the weight that may leave is told. */
function sayMayShip({ weights, packings }: LotRows, packages: number, packagesLeft: number): string {
  const { packed, shipped, aside } = weights;
  const kept = aside.condemned + aside.toRework + aside.opened;
  if (kept === 0n) return `${packagesLeft} of ${packages} packages may ship.`;
  const unit = /lb|oz/.test(packings[0]?.netUnit ?? '') ? 'lb' : 'kg';
  const free = packed - shipped - kept;
  const rest = 'what else is packed was condemned or is to be reworked.';
  return `${formatMass(free > 0n ? free : 0n, unit, 3, 'down')} of it may ship; ${rest}`;
}

function whyOnHold({ deviations }: LotRows, misses: LotStands['misses'], hasLeft: boolean): string | undefined {
  const [first, ...others] = deviations.filter(({ isOpen }) => isOpen);
  if (!first) return undefined;
  const next = !first.hasAction ? 'record the corrective action' : first.toDecide ? `decide what becomes of ${first.toDecide}` : 'close it';
  const more = others.length > 0 ? ` ${others.length} more ${others.length === 1 ? 'is' : 'are'} open.` : '';
  const recall = hasLeft ? ' Packages have already left: consider a recall.' : '';
  const missed = misses.get(first.deviationId)?.description ?? first.description;
  return `Deviation ${first.number} is open. ${ended(missed)} Next: ${next}.${more}${recall}`;
}

/** A person may leave out the full stop. */
const ended = (said: string): string => (/[.!?]$/.test(said) ? said : `${said}.`);

const unjudgedOf = (rows: LotRows): Unjudged[] =>
  unjudgedSubstances(rows.content.controlPoints, rows.wentIn).map(({ substance, judged: { verdict } }) => ({
    substance,
    verdict,
    settled: isDecided(substance, rows),
  }));

const sayWithNext = ({ because, next = '' }: Told): string => `${because} ${next}`.trim();

const undecided = (unjudged: Unjudged[]): string | undefined =>
  unjudged.flatMap(({ settled, verdict }) => (settled ? [] : sayWithNext(tell(verdict))))[0];

/** A running stage comes before the order of the plan. */
function whatIsNext({ wentIn }: LotRows, points: PointOnLot[]): string | undefined {
  if (wentIn.inputs.length === 0) return 'Next: put in the meat.';
  const open = points.filter(({ isSettled }) => !isSettled);
  const next = open.find(({ stands }) => stands === 'running') ?? open[0];
  if (!next) return undefined;
  const { name, monitoring } = next.point;
  if (next.stands === 'not-started') return `Next: ${name}. ${monitoring.what}`;
  if (next.point.takenAs === 'curve' && !next.endedAt && next.stands === 'missed') return `${name} is missed and goes on. Next: finish it.`;
  const doubt = next.judged.find(({ verdict }) => verdict.kind !== 'met');
  const told = doubt && tell(doubt.verdict, doubt.limit);
  return `${name} is ${next.stands}. ${told?.next ?? told?.because ?? ''}`.trim();
}

/**
 * Packages left belong to what was condemned. A hundredth counts as nothing, because weights never add up to the gram
 * and some stays on tables and trays (common practice, no source).
 */
function isUsedUp(weights: LotWeights): boolean {
  const { wentIn, packed, condemned, aside } = weights;
  return wentIn > 0n && isNegligible(keptOf(weights), wentIn) && (packed === 0n || condemned > 0n || aside.opened > 0n);
}

const keptOf = ({ wentIn, removed, condemned, reworked, shipped }: LotWeights): bigint => wentIn - removed - reworked - condemned - shipped;

/** None of it has left or gone into another lot. */
function whyCondemned(weights: LotWeights): string | undefined {
  const { wentIn, condemned, destroyed, reworked, shipped } = weights;
  if (condemned === 0n || reworked > 0n || shipped > 0n || !isNegligible(keptOf(weights), wentIn)) return undefined;
  return destroyed < condemned
    ? 'All of it was condemned and is held apart. Next: destroy it and record how.'
    : 'All of it was condemned and destroyed.';
}

function isAllToRework(weights: LotWeights): boolean {
  const kept = keptOf(weights);
  return weights.aside.pending > 0n && kept > 0n && isNegligible(kept - weights.aside.pending, kept);
}

function countPackages(packings: LotRows['packings']): { packages: number; packagesLeft: number } {
  const packages = packings.reduce((sum, { count }) => sum + count, 0);
  const shipped = packings.flatMap(({ shipmentLines }) => shipmentLines).reduce((sum, { count }) => sum + count, 0);
  return { packages, packagesLeft: packages - shipped };
}

function firstDue(points: PointOnLot[]): LotHead['running'] {
  const running = points.flatMap(({ point: { controlPointId, name }, endedAt, judged }) =>
    endedAt
      ? []
      : toldAll(judged, tell).flatMap(({ running: due }) =>
          due ? [{ controlPointId, name, bound: due.bound, deadline: due.deadline }] : [],
        ),
  );
  return running.sort((a, b) => (a.deadline ?? Infinity) - (b.deadline ?? Infinity))[0];
}
