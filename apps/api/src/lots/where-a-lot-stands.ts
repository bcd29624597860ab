import type { Lot, LotHead } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { clearedSince, type ClearedSince } from './cleared-since';
import { warningOf } from './forecast-warning';
import { isDecided } from './is-settled';
import { judgePoints, type PointOnLot } from './judge-points';
import { missesNow, type MissNow } from './misses-now';
import { readLots, type LotRows } from './lot-rows';
import { judgedOtherwise } from './judged-otherwise';
import { stand } from './stand';
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

export type Unjudged = NonNullable<Lot['unjudged']>[number];

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

/** Whatever of a restricted substance the plan does not speak of, and whether people have decided about it. */
const unjudgedOf = (rows: LotRows): Unjudged[] =>
  unjudgedSubstances(rows.content.controlPoints, rows.wentIn).map(({ substance, judged: { verdict } }) => ({
    substance,
    verdict,
    settled: isDecided(substance, rows),
  }));

function countPackages(packings: LotRows['packings']): { packages: number; packagesLeft: number } {
  const packages = packings.reduce((sum, { count }) => sum + count, 0);
  const shipped = packings.flatMap(({ shipmentLines }) => shipmentLines).reduce((sum, { count }) => sum + count, 0);
  return { packages, packagesLeft: packages - shipped };
}

function firstDue(points: PointOnLot[]): LotHead['running'] {
  const running = points.flatMap(({ point: { controlPointId, name }, endedAt, judged }) =>
    endedAt
      ? []
      : judged.flatMap(({ verdict: { running: due } }) =>
          due ? [{ controlPointId, name, bound: { code: `${due.code}.bound`, figures: due.figures }, deadline: due.deadline }] : [],
        ),
  );
  return running.sort((a, b) => (a.deadline ?? Infinity) - (b.deadline ?? Infinity))[0];
}
