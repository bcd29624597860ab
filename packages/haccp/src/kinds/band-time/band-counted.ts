import type { CurveContext } from '../../limits/curve-context';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { instantOf } from '../../thermal/time-in-band';
import type { BandTimeLimit } from './band-time-limit';
import { addToBandTimeSoFar, beginBandTime, passageOf, type Passage } from './judge-band-time';

/** Places of the first and last reading of the steps that count. */
export type Steps = { first: number; last: number; count: number };

export type BandCounted = { colder: readonly CurveReading[]; passage: Passage; steps?: Steps };

/** What the judge counts, and between which readings. Undefined without a usable reading. */
export function bandCounted(
  own: readonly CurveReading[],
  limit: BandTimeLimit,
  context: CurveContext,
  error: number,
): BandCounted | undefined {
  const curve = prepareCurve(own);
  const come = beginBandTime(limit, error);
  let all: Steps | undefined;
  let untilReached: Steps | undefined;
  curve.colder.forEach((_, index) => {
    const had = come.time.longest;
    addToBandTimeSoFar(come, instantOf(curve, index));
    if (come.time.longest > had) all = { first: all?.first ?? index - 1, last: index, count: (all?.count ?? 0) + 1 };
    if (come.timeUntilReached.longest === come.time.longest) untilReached = all;
  });
  const passage = come.first && come.last && passageOf(come, come.first, come.last, context);
  return passage && { colder: curve.colder, passage, steps: passage.isUntilReached ? untilReached : all };
}
