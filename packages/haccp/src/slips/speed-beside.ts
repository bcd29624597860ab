import type { CriticalLimit } from '../limits/limit';
import { kindOf } from '../kinds/registry';
import { aroundCore } from '../thermal/around-core';
import { beginSpeed, rateOf, takeForCore, tooFast } from '../thermal/core-speed';
import { isUsableReading, type CurveReading } from '../thermal/curve';
import { instantWith } from '../thermal/instant';
import type { BesideReading } from './which-is-right';

/**
 * As the judges do, beside the earlier readings that can be the core's. Undefined when it may be the core's, or the
 * piece is unknown.
 */
export function speedBeside(entered: CurveReading, known: BesideReading): 'rises' | 'falls' | undefined {
  const rate = known.piece && rateOf(known.piece);
  if (!rate) return undefined;
  const speed = beginSpeed(rate, aroundCore(known.surroundings, known.error));
  for (const reading of before(entered, known)) {
    const instant = instantWith(reading);
    if (!tooFast(speed, instant)) takeForCore(speed, instant);
  }
  const fast = tooFast(speed, instantWith(entered));
  return fast && (fast === 'rises faster than the piece can' ? 'rises' : 'falls');
}

const before = ({ at }: CurveReading, known: BesideReading): CurveReading[] =>
  known.before.filter((one) => isUsableReading(one) && one.at <= at).sort((a, b) => a.at - b.at);

export const isOfCore = (limits: readonly CriticalLimit[]): boolean => limits.some((limit) => kindOf(limit).isOfCore);
