import type { Account, Standing } from '@larderbook/contracts';
import { roundedMass, type Coded } from '@larderbook/haccp';
import { ended, sentence } from '../platform/account';
import type { LotRows } from './lot-rows';
import type { LotStands } from './where-a-lot-stands';
import { asideIn, isAllToRework, isUsedUp, leftIn, whyCondemned } from './what-is-left';
import { whatIsNext } from './what-is-next';
import { whyOnHold } from './why-on-hold';

type Found = Pick<
  LotStands,
  'points' | 'unjudged' | 'misses' | 'reviewCounts' | 'reviews' | 'packedSince' | 'packages' | 'packagesLeft' | 'judgedOtherwise'
>;
type Stand = { standing: Standing; because: Account };

/** Where a lot stands, why, and what comes next. */
export function stand(rows: LotRows, found: Found): Stand {
  const { misses, packages, packagesLeft } = found;
  const hold = whyOnHold(rows, misses, packages > packagesLeft);
  if (hold) return { standing: 'on-hold', because: hold };
  const condemned = whyCondemned(rows.weights);
  if (condemned) return { standing: 'condemned', because: [condemned] };
  return whatHasLeft(found) ?? whatIsLeft(rows) ?? whatIsToDo(rows, found) ?? whetherReviewed(rows, found);
}

function whatHasLeft({ reviews, packages, packagesLeft }: Found): Stand | undefined {
  if (packages === 0 || packagesLeft > 0) return undefined;
  const back = reviews.at(-1)?.takenBack;
  const again = back ? lookAgain(back, packages) : [];
  return back?.reason
    ? { standing: 'to-review', because: again }
    : { standing: 'shipped', because: [sentence('all-left', { count: packages }), ...again] };
}

function whatIsLeft({ weights }: LotRows): Stand | undefined {
  if (isUsedUp(weights)) return { standing: 'ended', because: [sentence('nothing-left')] };
  return isAllToRework(weights) ? { standing: 'in-work', because: [sentence('all-to-rework')] } : undefined;
}

/** A review stands by the rules it was signed by; people decide what those of now are to change. */
function whatIsToDo(rows: LotRows, { unjudged, judgedOtherwise, points, packages }: Found): Stand | undefined {
  const open = unjudged.find(({ settled }) => !settled);
  const undecided: Account | undefined = open && [{ verdict: open.verdict, tells: 'because and next' }];
  const next = undecided ?? (judgedOtherwise.length > 0 ? undefined : whatIsNext(rows, points));
  if (next) return { standing: 'in-work', because: next };
  return packages === 0 ? { standing: 'in-work', because: [sentence('next-pack')] } : undefined;
}

function whetherReviewed(rows: LotRows, found: Found): Stand {
  const { reviewCounts, packedSince, judgedOtherwise: points } = found;
  if (!reviewCounts || packedSince > 0) return { standing: 'to-review', because: [sentence('packed-and-settled'), ...whyToReview(found)] };
  const again = points.length > 0 ? [sentence('not-met-by-now', { points })] : [];
  return { standing: 'cleared', because: [whatMayShip(rows, found), ...again] };
}

function whyToReview({ reviews, packedSince, packages, packagesLeft }: Found): Account {
  const back = reviews.at(-1)?.takenBack;
  if (back) return lookAgain(back, packages - packagesLeft);
  return packedSince > 0 ? packedAfterIt(packedSince) : [sentence('next-review')];
}

const reviewAgain = sentence('next-review-again');

type TakenBack = NonNullable<LotStands['reviews'][number]['takenBack']>;

/** With a reason a person took it back: whatever has left may have left under it. */
const lookAgain = ({ what, reason }: TakenBack, gone: number): Account => [
  ...(reason ? [sentence('review-taken-back', { reason: ended(reason) })] : [what]),
  ...(reason && gone > 0 ? [sentence('left-under-it', { count: gone })] : []),
  reviewAgain,
];

/** A review is of the records of what it saw (9 CFR 417.5(c)). */
export const packedAfterIt = (count: number): Account => [sentence('packed-since', { count }), reviewAgain];

/** Decisions name a weight and not packages; so is told what of the packages may leave. */
function whatMayShip({ weights, packings }: LotRows, { packages, packagesLeft }: Found): Coded {
  if (asideIn(weights) === 0n) return sentence('so-many-may-ship', { left: packagesLeft, count: packages });
  const unit = /lb|oz/.test(packings[0]?.netUnit ?? '') ? 'lb' : 'kg';
  const free = leftIn(weights);
  return sentence('so-much-may-ship', { weight: roundedMass(free > 0n ? free : 0n, unit, 3, 'down') });
}
