import { describe, expect, test } from 'vitest';
import {
  catalogue,
  coldHolding,
  comeUpWithinSixHours,
  cookedMeat65Log,
  coolingUncured,
  nitriteComminuted,
  salmonellaKilled,
} from '../limit-sets';
import { both } from '../limit-sets/printed';
import type { CriticalLimit } from './limit';
import type { LethalityLimit } from '../kinds/lethality/lethality-limit';
import { limitFault } from './limit-fault';

const { source } = nitriteComminuted;
const supported: LethalityLimit = { ...salmonellaKilled, authority: 'An invented authority, folder 3' };
const resistant = (wrong: Partial<LethalityLimit['set']>): LethalityLimit => ({ ...supported, set: { ...supported.set, ...wrong } });

describe('a limit', () => {
  test.each(catalogue.map(({ key, limit }) => [key, limit] as const))('as published is sound: %s', (_key, limit) => {
    expect(limitFault(limit)).toBeUndefined();
  });

  test('on a kill or a loss is sound when its figures are, and an authority supports the kill', () => {
    expect(limitFault(supported)).toBeUndefined();
    expect(limitFault({ kind: 'weightLoss', percent: 35, source })).toBeUndefined();
  });

  test.each<[string, CriticalLimit, string]>([
    ['a kill of nothing', { ...supported, log10: 0 }, 'The target is no whole number of hundredths of a log above zero.'],
    ['a z of nothing', resistant({ zCelsius: 0 }), 'D, z or the reference temperature is no usable number.'],
    ['a D below nothing', resistant({ minutesPerLog: -1 }), 'D, z or the reference temperature is no usable number.'],
    ['no reference', resistant({ referenceCelsius: NaN }), 'D, z or the reference temperature is no usable number.'],
    [
      'a D with a slipped decimal point',
      resistant({ minutesPerLog: 0.00001 }),
      'D is below 0.0001 min or z below 2 °C: look for a slipped decimal point.',
    ],
    [
      'a z with a slipped decimal point',
      resistant({ zCelsius: 0.556 }),
      'D is below 0.0001 min or z below 2 °C: look for a slipped decimal point.',
    ],
    [
      'a mean of many studies',
      resistant({ use: 'mean' }),
      'A mean of many studies is no basis for a decision: half of all cases resist longer.',
    ],
    ['a kill counted from nowhere', { ...supported, floor: {} }, 'The temperature from which kill is counted is no usable number.'],
    [
      'a kill nobody supports',
      { ...supported, authority: ' ' },
      'Name the process authority that supports it, and where the letter is filed.',
    ],
    ['a loss of nothing', { kind: 'weightLoss', percent: 0, source }, 'The loss asked for is no percentage above zero.'],
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
    [
      'rows hotter in °F but colder in °C',
      {
        ...cookedMeat65Log,
        rows: [
          { at: both(145, 62.8), seconds: 240 },
          { at: both(150, 60), seconds: 67 },
        ],
      },
      'The table of holding times is empty or its rows contradict each other.',
    ],
    [
      'a chill that warms',
      { ...coolingUncured, stages: [{ from: both(80, 26.7), to: both(130, 54.4), withinSeconds: 5400, counted: 'stage' }] },
      'A stage of the cooling does not end colder than it begins.',
    ],
    [
      'a come-up that cools',
      { ...comeUpWithinSixHours, from: both(130, 54.4), to: both(50, 10) },
      'The band does not end warmer than it begins.',
    ],
  ])('%s cannot be judged against', (_case, limit, sentence) => {
    expect(limitFault(limit)).toBe(sentence);
  });
});
