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
import { plainPart } from './plain-part.test-data';

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
    ['a kill of nothing', { ...supported, log10: 0 }, 'kill-target-unusable'],
    ['a z of nothing', resistant({ zCelsius: 0 }), 'kill-law-unusable'],
    ['a D below nothing', resistant({ minutesPerLog: -1 }), 'kill-law-unusable'],
    ['no reference', resistant({ referenceCelsius: NaN }), 'kill-law-unusable'],
    ['a D with a slipped decimal point', resistant({ minutesPerLog: 0.00001 }), 'kill-law-slipped 0.0001 min 2 °C'],
    ['a z with a slipped decimal point', resistant({ zCelsius: 0.556 }), 'kill-law-slipped 0.0001 min 2 °C'],
    ['a mean of many studies', resistant({ use: 'mean' }), 'kill-by-mean'],
    ['a kill counted from nowhere', { ...supported, floor: {} }, 'kill-floor-unusable'],
    ['a kill nobody supports', { ...supported, authority: ' ' }, 'kill-authority-missing'],
    ['a loss of nothing', { kind: 'weightLoss', percent: 0, source }, 'loss-no-percentage'],
    ['a range without figures', { ...coldHolding, max: undefined }, 'neither-least-nor-most'],
    ['a temperature without its unit', { ...coldHolding, max: 4100 }, 'bound-not-in-degrees'],
    ['a pH in degrees', { ...coldHolding, measured: 'pH' }, 'bound-in-degrees'],
    ['a range upside down', { ...coldHolding, min: both(45, 7.2) }, 'least-above-most'],
    ['a pH upside down', { ...coldHolding, measured: 'pH', min: 5300, max: 4600 }, 'least-above-most'],
    ['a pH with a part of a thousandth', { ...coldHolding, measured: 'pH', max: 4600.5 }, 'bound-unusable'],
    ['a concentration below nothing', { ...nitriteComminuted, min: -1 }, 'bound-unusable'],
    ['nitrite as nitrate', { ...nitriteComminuted, countedAs: 'NO₃' }, 'ion-not-held NO₃'],
    ['a concentration without figures', { ...nitriteComminuted, max: undefined }, 'neither-least-nor-most'],
    ['a concentration upside down', { ...nitriteComminuted, min: 20_000 }, 'least-above-most'],
    [
      'rows hotter in °F but colder in °C',
      {
        ...cookedMeat65Log,
        rows: [
          { at: both(145, 62.8), seconds: 240 },
          { at: both(150, 60), seconds: 67 },
        ],
      },
      'holding-times-unusable',
    ],
    [
      'a chill that warms',
      { ...coolingUncured, stages: [{ from: both(80, 26.7), to: both(130, 54.4), withinSeconds: 5400, counted: 'stage' }] },
      'stage-not-colder',
    ],
    ['a come-up that cools', { ...comeUpWithinSixHours, from: both(130, 54.4), to: both(50, 10) }, 'band-not-warmer'],
  ])('%s cannot be judged against', (_case, limit, said) => {
    const fault = limitFault(limit);
    expect(fault && plainPart(fault)).toBe(said);
  });
});
