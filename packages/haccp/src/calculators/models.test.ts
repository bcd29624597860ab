import { describe, expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { arrivalAtTarget } from './arrival-at-target';
import { compositionByAnalysis } from './composition-by-analysis';
import { growthWhileCooling } from './growth-while-cooling';
import { ingoingByMethod } from './ingoing-by-method';
import { lethalityOfCook } from './lethality-of-cook';
import { listeriaInThePack } from './listeria-in-the-pack';
import type { Calculation } from './calculation';
import type { CannotCalculate } from './cannot';
import { kindsOf, plainly } from './plain-calculation.test-data';

const resultsOf = (outcome: Calculation | CannotCalculate) => plainly(outcome).results;
const named = (outcome: Calculation | CannotCalculate, what: string) => resultsOf(outcome).find((result) => result.what === what);

describe('what a cook killed', () => {
  const hold = [
    { minutes: 0, value: 60 },
    { minutes: 10, value: 60 },
  ];

  test('the table decides; the integral is named with its organism and is support alone', () => {
    const outcome = lethalityOfCook(hold, '°C', cookedMeat65Log, 'Cooked meat');
    expect(kindsOf(outcome)).toEqual(['missed']);
    const [, salmonella] = resultsOf(outcome);
    expect(salmonella).toMatchObject({ what: 'set-from set-salmonella-meat-table 54.4 °C', unit: 'log10' });
    // 10 min at 60 °C with D 1.714 min: 10 ÷ 1.714
    expect(salmonella?.value).toBeCloseTo(5.834306, 5);
    expect(resultsOf(outcome).every(({ what }) => what === 'judged-by' || /^set-from .* 5/.test(what))).toBe(true);
  });

  test('a row whose time is there in all, though not without a break, is named', () => {
    const broken = [
      [0, 63],
      [3, 63],
      [3.5, 50],
      [4, 50],
      [4.5, 63],
      [7, 63],
    ].map(([minutes = 0, value = 0]) => ({ minutes, value }));
    const outcome = lethalityOfCook(broken, '°C', cookedMeat65Log, '');
    expect(kindsOf(outcome)).toEqual(['missed']);
    expect(plainly(outcome).notes).toContain('time-in-all row-for 62.8 °C 4 min');
  });

  test('a cook the table passes has no rows to be made up for', () => {
    const outcome = lethalityOfCook(
      [
        { minutes: 0, value: 65 },
        { minutes: 10, value: 65 },
      ],
      '°C',
      cookedMeat65Log,
      '',
    );
    expect(kindsOf(outcome)).toEqual(['met']);
    expect(plainly(outcome).notes.filter((note) => note.startsWith('time-in-all'))).toEqual([]);
  });

  test('one reading is no cook', () => {
    expect(lethalityOfCook(hold.slice(1), '°C', cookedMeat65Log, '')).toHaveProperty('cannot');
  });
});

describe('what grew while it cooled', () => {
  const readings = [
    { minutes: 0, value: 54.4 },
    { minutes: 90, value: 27 },
  ];
  const asked = { readings, unit: '°C', species: 'beef' } as const;

  test('is a class of the model with its claim, never a verdict', () => {
    const outcome = growthWhileCooling({ ...asked, cured: false });
    expect(kindsOf(outcome)).toEqual([]);
    expect(named(outcome, 'highest-estimate')).toMatchObject({
      is: 'grown-at-least grown-1-to-2-log grown-above-2-log growth-set-beef 1 unconfirmed',
    });
    expect(named(outcome, 'highest-estimate')?.value).toBeCloseTo(1.336435, 3);
  });

  test('of a cured product it is a worst case beside what was published', () => {
    const outcome = growthWhileCooling({ ...asked, cured: true });
    expect(named(outcome, 'worst-case-uncured')).toBeDefined();
    expect(resultsOf(outcome).length).toBeGreaterThan(3);
  });

  test('one reading shows nothing', () => {
    expect(growthWhileCooling({ ...asked, cured: false, readings: readings.slice(1) })).toHaveProperty('cannot');
  });
});

describe('when it will be there', () => {
  // T = 2 + 52.4 e^(−t ÷ 3.2 h): at 26.7 °C after 2.406731 h.
  const readings = Array.from({ length: 8 }, (_, index) => ({
    minutes: index * 15,
    value: Number((2 + 52.4 * Math.exp((-index * 0.25) / 3.2)).toFixed(2)),
  }));
  const asked = { readings, unit: '°C', way: 'cooling', target: 26.7, medium: 2 } as const;

  test('is a range around the law, with a state', () => {
    const outcome = arrivalAtTarget({ ...asked, withinMinutes: 240 });
    expect(named(outcome, 'state')).toMatchObject({ is: 'state-on-course' });
    expect(named(outcome, 'most-likely')?.is).toMatch(/about-time 2 h 2[345] min/);
  });

  test('a chiller no colder than its target may never get it there', () => {
    const outcome = arrivalAtTarget({ ...asked, target: 24, medium: 25 });
    expect(named(outcome, 'at-the-latest')).toMatchObject({ is: 'never-as-it-goes' });
  });

  test('is too early to tell from two readings, never from a medium beyond the target', () => {
    expect(named(arrivalAtTarget({ ...asked, readings: readings.slice(0, 2) }), 'state')).toMatchObject({ is: 'state-too-early-to-tell' });
    expect(named(arrivalAtTarget({ ...asked, medium: 30 }), 'state')?.is).not.toBe('state-on-course');
    expect(arrivalAtTarget({ ...asked, readings: [] })).toHaveProperty('cannot');
    expect(arrivalAtTarget({ ...asked, target: 26.777 })).toHaveProperty('cannot');
  });
});

describe('ingoing amount by method', () => {
  const salt = { value: 25, unit: 'g' } as const;
  const weight = { value: 10, unit: 'kg' } as const;
  const said = (asked: Omit<Parameters<typeof ingoingByMethod>[0], 'salt' | 'strength' | 'weight'>) =>
    named(ingoingByMethod({ salt, strength: 6.25, weight, ...asked }), 'ingoing')?.is;

  test.each([
    ['chopped', {}, '156.25 ppm'],
    ['dry-cured', {}, '156.25 ppm'],
    ['per batch', {}, '156.25 ppm'],
    ['pumped', { pump: 10 }, '15.63 ppm'],
    ['massaged', { pump: 10 }, '15.63 ppm'],
    ['immersed', { pump: 5 }, '7.81 ppm'],
    ['immersed until even', { meat: { value: 10, unit: 'kg' } }, '78.13 ppm'],
  ] as const)('%s', (method, more, ppm) => {
    expect(said({ method, ...more })).toBe(ppm);
  });

  test.each(['pumped', 'immersed', 'immersed until even'] as const)('%s needs more than the pickle', (method) => {
    expect(plainly(ingoingByMethod({ salt, strength: 6.25, weight, method })).cannot).toMatch(
      /^(meat-too|picked-up-in-percent|pumped-in-percent)$/,
    );
  });

  test('nothing to refer to, and a strength that cannot be, are said', () => {
    expect(ingoingByMethod({ salt, strength: 0, weight, method: 'chopped' })).toHaveProperty('cannot');
    expect(ingoingByMethod({ salt, strength: 6.25, weight: { value: 0, unit: 'kg' }, method: 'chopped' })).toHaveProperty('cannot');
  });
});

describe('composition by analysis', () => {
  const sausage = { moisture: 60, protein: 14, fat: 25, salt: 2 };

  test('added water is moisture less four times the protein; the rest follows', () => {
    const outcome = compositionByAnalysis({ ...sausage, pH: 4.9, aw: 0.96 });
    expect(resultsOf(outcome).map(({ is }) => is)).toEqual([
      '4 %',
      '29 %',
      '4.286',
      '3.226 %',
      'stability-shelf-stable',
      'kept-in-refrigeration',
    ]);
  });

  test('without water activity nothing is said of how it keeps', () => {
    expect(resultsOf(compositionByAnalysis({ ...sausage, pH: 4.9 })).map(({ what }) => what)).toEqual([
      'added-water',
      'fat-and-added-water',
      'moisture-to-protein',
      'salt-in-water',
    ]);
  });

  test.each([{ protein: 0 }, { moisture: NaN }, { fat: 101 }, { pH: 15, aw: 0.9 }])('%j is refused', (wrong) => {
    expect(compositionByAnalysis({ ...sausage, ...wrong })).toHaveProperty('cannot');
  });
});

describe('Listeria in a chilled pack', () => {
  test('is an estimate inside the range and refused, naming the figure, outside', () => {
    const product = { waterPhaseSalt: 3.5, pH: 6.1 };
    expect(named(listeriaInThePack(product, { celsius: 5, hours: 240 }), 'to-a-hundredfold')?.is).toMatch(/^about-days \d+$/);
    const salty = listeriaInThePack({ waterPhaseSalt: 9, pH: 5 }, { celsius: 2, hours: 240 });
    expect(named(salty, 'to-a-hundredfold')).toMatchObject({ is: 'no-growth' });
    expect(plainly(listeriaInThePack(product, { celsius: 60, hours: 240 })).cannot).toBe('outside-celsius 60 -2.83 25');
  });
});
