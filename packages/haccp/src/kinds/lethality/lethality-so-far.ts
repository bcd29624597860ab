import { boundOf } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import type { LethalityLimit } from './lethality-limit';
import type { Instant } from '../../thermal/instant';
import { killAbove, killLaw, type KillLaw } from '../../lethality/kill-rate';

/** Constant in size, however many readings. */
export type LethalitySoFar = {
  readonly limit: LethalityLimit;
  /** Taken off every reading, on the common scale. */
  readonly error: number;
  readonly law: KillLaw;
  /** On the common scale; the warmer of two printed figures. */
  readonly floor: number;
  readonly longestGap: number;
  /** log10: the colder end of each step, zero over a gap. */
  sure: number;
  /** log10, gaps too: for information. */
  byStraightLines: number;
  /** With heat in it (ms); 0 where there is none. */
  gap: number;
  hottest?: Instant;
  last?: Instant;
  lastValue: number;
};

export function beginLethalityLimit(limit: LethalityLimit, error: number): LethalitySoFar {
  const floor = boundOf(limit.floor);
  return {
    limit,
    error,
    law: killLaw(limit.set),
    floor: Math.max(floor['°F'], floor['°C']),
    longestGap: millisecondsOf(limit.longestGapSeconds),
    sure: 0,
    byStraightLines: 0,
    gap: 0,
    hottest: undefined,
    last: undefined,
    lastValue: NaN,
  };
}

export function addToLethalityLimit(cook: LethalitySoFar, instant: Instant): void {
  const { last, lastValue, law, floor } = cook;
  const value = instant.cold - cook.error;
  if (last && (value >= floor || lastValue >= floor)) {
    const span = instant.at - last.at;
    const straight = killAbove(law, floor, lastValue, value, span);
    cook.byStraightLines += straight;
    if (!(span <= cook.longestGap)) cook.gap = Math.max(cook.gap, span);
    else if (value === lastValue) cook.sure += straight;
    else {
      const colder = Math.min(lastValue, value);
      cook.sure += killAbove(law, floor, colder, colder, span);
    }
  }
  if (!cook.hottest || instant.cold > cook.hottest.cold) cook.hottest = instant;
  cook.last = instant;
  cook.lastValue = value;
}

/** Field by field: a spread would slow every reading. */
export const copyOfLethality = (cook: LethalitySoFar): LethalitySoFar => ({
  limit: cook.limit,
  error: cook.error,
  law: cook.law,
  floor: cook.floor,
  longestGap: cook.longestGap,
  sure: cook.sure,
  byStraightLines: cook.byStraightLines,
  gap: cook.gap,
  hottest: cook.hottest,
  last: cook.last,
  lastValue: cook.lastValue,
});

/** 30 days. */
const LONGEST_STAGE = 30 * 86_400_000;

/** Milliseconds at the last temperature; undefined where too cold or too long. */
export function timeToKill({ law, floor, lastValue }: LethalitySoFar, log10: number): number | undefined {
  if (lastValue < floor) return undefined;
  const left = Math.ceil(log10 / Math.exp(law.perStep * lastValue + law.offset));
  return left <= LONGEST_STAGE ? left : undefined;
}
