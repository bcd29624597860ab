import { boundOf } from '../../quantity/bound';
import { millisecondsOf } from '../../quantity/duration';
import type { LethalityLimit } from './lethality-limit';
import type { Instant } from '../../thermal/instant';
import { killAbove, killLaw, type KillLaw } from '../../lethality/kill-rate';

/** A cook's kill up to the last reading added, against a target of logs. It never grows with its readings. */
export type LethalitySoFar = {
  readonly limit: LethalityLimit;
  /** Taken off every reading, on the common scale. */
  readonly error: number;
  readonly law: KillLaw;
  /** On the common scale; where the source prints two figures, the warmer. */
  readonly floor: number;
  readonly longestGap: number;
  /** log10 that is sure: over each step the colder end, over a gap nothing. */
  sure: number;
  /** log10 by straight lines, gaps too: for information. */
  byStraightLines: number;
  /** The longest gap with any heat in it (ms); 0 where there is none. */
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

/** Adds one reading, later than all before. */
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

/** A second one that goes on by itself; written out, as a spread would slow every reading. */
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

/** A stage that would go on for longer than this is none (30 days). */
const LONGEST_STAGE = 30 * 86_400_000;

/**
 * Milliseconds until so many logs more are there, if it stays at the last temperature; undefined when it is too cold
 * for that in any useful time.
 */
export function timeToKill({ law, floor, lastValue }: LethalitySoFar, log10: number): number | undefined {
  if (lastValue < floor) return undefined;
  const left = Math.ceil(log10 / Math.exp(law.perStep * lastValue + law.offset));
  return left <= LONGEST_STAGE ? left : undefined;
}
