import { describe, expect, test } from 'vitest';
import { fermentationByDegreeHours } from './fermentation-by-degree-hours';
import { freezingOfPork } from './freezing-of-pork';
import { lossInDrying } from './loss-in-drying';
import { kindsOf, plainly } from './plain-calculation.test-data';

describe('fermentation by degree-hours', () => {
  const hourly = (value: number, hours: number) =>
    Array.from({ length: hours + 1 }, (_, hour) => ({ minutes: hour * 60, value, pH: hour === hours ? 5.3 : 5.6 }));

  // FSIS (2005), p. 164: below 90 °F at most 1200 degree-hours over 60 °F; 20 × 60 h is 1200.
  test('1200 degree-hours below 90 °F are within, an hour more is not', () => {
    expect(kindsOf(fermentationByDegreeHours(hourly(80, 60), '°F'))).toEqual(['met']);
    expect(kindsOf(fermentationByDegreeHours(hourly(80, 61), '°F'))).toEqual(['missed']);
  });

  test('no reading, and a pH that never comes down, are never met', () => {
    expect(fermentationByDegreeHours([], '°F')).toHaveProperty('cannot');
    const high = hourly(80, 20).map((reading) => ({ ...reading, pH: 5.6 }));
    expect(kindsOf(fermentationByDegreeHours(high, '°C'))).not.toContain('met');
  });
});

describe('loss of weight in drying', () => {
  const asked = { unit: 'g', percent: 30 } as const;
  /** 500 g on its way to 60 %: lost = 0.4 × (1 − e^(−days ÷ 10)). */
  const weighings = [0, 3, 6, 9, 12].map((days) => ({ days, weight: Math.round(500 * (1 - 0.4 * (1 - Math.exp(-days / 10)))) }));

  test('says what was lost and a range of days, or that it is too early', () => {
    expect(plainly(lossInDrying({ ...asked, weighings }))).toMatchObject({
      results: [{ is: '28.0 %' }, { is: 'state-expected' }, { is: 'day 14' }, { is: 'day 14' }, { is: 'day 14' }],
    });
    expect(plainly(lossInDrying({ ...asked, weighings: weighings.slice(0, 2) }))).toMatchObject({
      results: [{ what: 'lost-so-far' }, { is: 'state-too-early-to-tell' }],
    });
  });

  test('one weighing is too early, none cannot be worked with', () => {
    expect(plainly(lossInDrying({ ...asked, weighings: weighings.slice(0, 1) }))).toMatchObject({
      results: [{ is: '0.0 %' }, { is: 'state-too-early-to-tell' }],
    });
    expect(lossInDrying({ ...asked, weighings: [] })).toHaveProperty('cannot');
    expect(lossInDrying({ unit: 'g', percent: 0, weighings })).toHaveProperty('cannot');
  });
});

describe('freezing of pork', () => {
  const cold = (value: number, hours: number) => Array.from({ length: hours + 1 }, (_, hour) => ({ minutes: hour * 60, value }));

  test('is judged by the centre or by the freezer and the thickness', () => {
    expect(kindsOf(freezingOfPork({ what: 'centre' }, cold(-5, 200), '°F'))).toEqual(['met']);
    expect(kindsOf(freezingOfPork({ what: 'centre' }, cold(20, 200), '°F'))).not.toContain('met');
    const thick = { what: 'freezer', thickness: { value: 200, unit: 'in' } } as const;
    expect(kindsOf(freezingOfPork(thick, cold(-30, 2), '°F'))).toEqual(['undetermined']);
    expect(freezingOfPork({ what: 'centre' }, [], '°F')).toHaveProperty('cannot');
  });
});

test('a piece that dries no more says that it will not get there as it goes now', () => {
  /** 20 % and no further: lost = 0.2 × (1 − e^(−days ÷ 3)). */
  const weighings = [0, 3, 6, 9, 12].map((days) => ({ days, weight: Math.round(500 * (1 - 0.2 * (1 - Math.exp(-days / 3)))) }));
  expect(plainly(lossInDrying({ unit: 'g', percent: 25, weighings }))).toMatchObject({
    results: [{ is: '19.6 %' }, { is: 'state-may-never' }, { is: 'not-as-it-goes' }, {}, { is: 'not-as-it-goes' }],
  });
});
