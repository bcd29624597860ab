import { describe, expect, test } from 'vitest';
import { catalogue, coldHolding, comeUpWithinSixHours, cookedMeat65Log, coolingUncured, nitriteComminuted } from '../limit-sets';
import { both } from '../limit-sets/printed';
import type { CriticalLimit } from './limit';
import { limitFault } from './limit-fault';

describe('a limit', () => {
  test.each(catalogue.map(({ key, limit }) => [key, limit] as const))('as published is sound: %s', (_key, limit) => {
    expect(limitFault(limit)).toBeUndefined();
  });

  test.each<[string, CriticalLimit, string]>([
    ['a range without figures', { ...coldHolding, max: undefined }, 'The range has neither a least nor a most.'],
    ['a temperature without its unit', { ...coldHolding, max: 4100 }, 'A range of temperatures needs its figures in °F or °C.'],
    ['a pH in degrees', { ...coldHolding, measured: 'pH' }, 'Only a temperature has °F or °C.'],
    ['a range upside down', { ...coldHolding, min: both(45, 7.2) }, 'The least is more than the most.'],
    ['a pH upside down', { ...coldHolding, measured: 'pH', min: 5300, max: 4600 }, 'The least is more than the most.'],
    ['a pH with a part of a thousandth', { ...coldHolding, measured: 'pH', max: 4600.5 }, 'A figure of the range is no usable number.'],
    ['a concentration below nothing', { ...nitriteComminuted, min: -1 }, 'A figure of the concentration is no whole number above zero.'],
    ['nitrite as nitrate', { ...nitriteComminuted, countedAs: 'NO₃' }, 'sodium nitrite holds no NO₃ to count.'],
    ['a concentration without figures', { ...nitriteComminuted, max: undefined }, 'The concentration has neither a least nor a most.'],
    ['a concentration upside down', { ...nitriteComminuted, min: 20_000 }, 'The least is more than the most.'],
    ['rows hotter in °F but colder in °C', { ...cookedMeat65Log, rows: [{ at: both(145, 62.8), seconds: 240 }, { at: both(150, 60), seconds: 67 }] }, 'The table of holding times is empty or its rows contradict each other.'],
    ['a chill that warms', { ...coolingUncured, stages: [{ from: both(80, 26.7), to: both(130, 54.4), withinSeconds: 5400, counted: 'stage' }] }, 'A stage of the cooling does not end colder than it begins.'],
    ['a come-up that cools', { ...comeUpWithinSixHours, from: both(130, 54.4), to: both(50, 10) }, 'The band does not end warmer than it begins.'],
  ])('%s cannot be judged against', (_case, limit, sentence) => {
    expect(limitFault(limit)).toBe(sentence);
  });
});
