import { describe, expect, test } from 'vitest';
import { fermentationByDegreeHours } from './fermentation-by-degree-hours';
import { freezingOfPork } from './freezing-of-pork';
import { lossInDrying } from './loss-in-drying';
import { plainTell } from '../limits/plain-tell.test-data';

describe('fermentation by degree-hours', () => {
  const hourly = (value: number, hours: number) =>
    Array.from({ length: hours + 1 }, (_, hour) => ({ minutes: hour * 60, value, pH: hour === hours ? 5.3 : 5.6 }));

  // FSIS (2005), p. 164: below 90 °F at most 1200 degree-hours over 60 °F; 20 × 60 h is 1200.
  test('1200 degree-hours below 90 °F are within, an hour more is not', () => {
    expect(fermentationByDegreeHours(hourly(80, 60), '°F', plainTell)).toMatchObject({ verdicts: [{ kind: 'met' }] });
    expect(fermentationByDegreeHours(hourly(80, 61), '°F', plainTell)).toMatchObject({ verdicts: [{ kind: 'missed' }] });
  });

  test('no reading, and a pH that never comes down, are never met', () => {
    expect(fermentationByDegreeHours([], '°F', plainTell)).toHaveProperty('cannot');
    const high = hourly(80, 20).map((reading) => ({ ...reading, pH: 5.6 }));
    expect(fermentationByDegreeHours(high, '°C', plainTell)).not.toMatchObject({ verdicts: [{ kind: 'met' }] });
  });
});

describe('loss of weight in drying', () => {
  const asked = { unit: 'g', percent: 30 } as const;
  /** 500 g on its way to 60 %: lost = 0.4 × (1 − e^(−days ÷ 10)). */
  const weighings = [0, 3, 6, 9, 12].map((days) => ({ days, weight: Math.round(500 * (1 - 0.4 * (1 - Math.exp(-days / 10)))) }));

  test('says what was lost and a range of days, or that it is too early', () => {
    expect(lossInDrying({ ...asked, weighings })).toMatchObject({
      results: [{ said: '28.0 %' }, { said: 'expected' }, { said: 'day 14' }, { said: 'day 14' }, { said: 'day 14' }],
    });
    expect(lossInDrying({ ...asked, weighings: weighings.slice(0, 2) })).toMatchObject({
      results: [{ what: 'Lost so far' }, { said: 'too early to tell' }],
    });
  });

  test('one weighing is too early, none cannot be worked with', () => {
    expect(lossInDrying({ ...asked, weighings: weighings.slice(0, 1) })).toMatchObject({
      results: [{ said: '0.0 %' }, { said: 'too early to tell' }],
    });
    expect(lossInDrying({ ...asked, weighings: [] })).toHaveProperty('cannot');
    expect(lossInDrying({ unit: 'g', percent: 0, weighings })).toHaveProperty('cannot');
  });
});

describe('freezing of pork', () => {
  const cold = (value: number, hours: number) => Array.from({ length: hours + 1 }, (_, hour) => ({ minutes: hour * 60, value }));

  test('is judged by the centre or by the freezer and the thickness', () => {
    expect(freezingOfPork({ what: 'centre' }, cold(-5, 200), '°F', plainTell)).toMatchObject({ verdicts: [{ kind: 'met' }] });
    expect(freezingOfPork({ what: 'centre' }, cold(20, 200), '°F', plainTell)).not.toMatchObject({ verdicts: [{ kind: 'met' }] });
    const thick = { what: 'freezer', thickness: { value: 200, unit: 'in' } } as const;
    expect(freezingOfPork(thick, cold(-30, 2), '°F', plainTell)).toMatchObject({ verdicts: [{ kind: 'undetermined' }] });
    expect(freezingOfPork({ what: 'centre' }, [], '°F', plainTell)).toHaveProperty('cannot');
  });
});

test('a piece that dries no more says that it will not get there as it goes now', () => {
  /** 20 % and no further: lost = 0.2 × (1 − e^(−days ÷ 3)). */
  const weighings = [0, 3, 6, 9, 12].map((days) => ({ days, weight: Math.round(500 * (1 - 0.2 * (1 - Math.exp(-days / 3)))) }));
  expect(lossInDrying({ unit: 'g', percent: 25, weighings })).toMatchObject({
    results: [{ said: '19.6 %' }, { said: 'may never' }, { said: 'not as it goes now' }, {}, { said: 'not as it goes now' }],
  });
});
