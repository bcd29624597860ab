import { describe, expect, test } from 'vitest';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { arrivalAtTarget } from './arrival-at-target';
import { compositionByAnalysis } from './composition-by-analysis';
import { growthWhileCooling } from './growth-while-cooling';
import { ingoingByMethod } from './ingoing-by-method';
import { lethalityOfCook } from './lethality-of-cook';
import { listeriaInThePack } from './listeria-in-the-pack';
import type { CannotCalculate, Result, Calculation } from './calculation';
import { plainTell } from '../limits/plain-tell.test-data';

const resultsOf = (outcome: Calculation | CannotCalculate): Result[] => ('cannot' in outcome ? [] : outcome.results);
const named = (outcome: Calculation | CannotCalculate, what: string) => resultsOf(outcome).find((result) => result.what === what);

describe('what a cook killed', () => {
  const hold = [
    { minutes: 0, value: 60 },
    { minutes: 10, value: 60 },
  ];

  test('the table decides; the integral is named with its organism and is support alone', () => {
    const outcome = lethalityOfCook(hold, '°C', cookedMeat65Log, 'Cooked meat', plainTell);
    expect(outcome).toMatchObject({ verdicts: [{ kind: 'missed' }] });
    const [, salmonella] = resultsOf(outcome);
    expect(salmonella).toMatchObject({ what: expect.stringContaining('Salmonella'), unit: 'log10, model estimate' });
    // 10 min at 60 °C with D 1.714 min: 10 ÷ 1.714
    expect(salmonella?.value).toBeCloseTo(5.834306, 5);
    expect(resultsOf(outcome).every(({ what }) => what === 'Judged by' || what.includes('from 5'))).toBe(true);
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
    const outcome = lethalityOfCook(broken, '°C', cookedMeat65Log, '', plainTell);
    expect(outcome).toMatchObject({ verdicts: [{ kind: 'missed' }] });
    expect('notes' in outcome && outcome.notes).toContain('In all, though not without a break, there was time for 62.8 °C for 4 min.');
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
      plainTell,
    );
    expect(outcome).toMatchObject({ verdicts: [{ kind: 'met' }] });
    expect('notes' in outcome && outcome.notes.filter((note) => note.startsWith('In all'))).toEqual([]);
  });

  test('one reading is no cook', () => {
    expect(lethalityOfCook(hold.slice(1), '°C', cookedMeat65Log, '', plainTell)).toHaveProperty('cannot');
  });
});

describe('what grew while it cooled', () => {
  const readings = [
    { minutes: 0, value: 54.4 },
    { minutes: 90, value: 27 },
  ];
  const asked = { readings, unit: '°C', species: 'beef' } as const;

  test('is a class of the model with its claim, never a verdict', () => {
    const outcome = growthWhileCooling({ ...asked, cured: false }, () => '');
    expect(outcome).toMatchObject({ verdicts: [] });
    expect(named(outcome, 'Highest estimate')).toMatchObject({ said: expect.stringMatching(/1 to 2 log.*model estimate/) });
    expect(named(outcome, 'Highest estimate')?.value).toBeCloseTo(1.336435, 3);
  });

  test('of a cured product it is a worst case beside what was published', () => {
    const outcome = growthWhileCooling({ ...asked, cured: true }, () => '');
    expect(named(outcome, 'Worst case, as if uncured')).toBeDefined();
    expect(resultsOf(outcome).length).toBeGreaterThan(3);
  });

  test('one reading shows nothing', () => {
    expect(growthWhileCooling({ ...asked, cured: false, readings: readings.slice(1) }, () => '')).toHaveProperty('cannot');
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
    expect(named(outcome, 'State')).toMatchObject({ said: 'on course' });
    expect(named(outcome, 'Most likely')).toMatchObject({ said: expect.stringMatching(/about 2 h 2[345] min/) });
  });

  test('a chiller no colder than its target may never get it there', () => {
    const outcome = arrivalAtTarget({ ...asked, target: 24, medium: 25 });
    expect(named(outcome, 'At the latest')).toMatchObject({ said: 'never, as it goes now' });
  });

  test('is too early to tell from two readings, never from a medium beyond the target', () => {
    expect(named(arrivalAtTarget({ ...asked, readings: readings.slice(0, 2) }), 'State')).toMatchObject({ said: 'too early to tell' });
    expect(named(arrivalAtTarget({ ...asked, medium: 30 }), 'State')?.said).not.toBe('on course');
    expect(arrivalAtTarget({ ...asked, readings: [] })).toHaveProperty('cannot');
    expect(arrivalAtTarget({ ...asked, target: 26.777 })).toHaveProperty('cannot');
  });
});

describe('ingoing amount by method', () => {
  const salt = { value: 25, unit: 'g' } as const;
  const weight = { value: 10, unit: 'kg' } as const;
  const said = (asked: Omit<Parameters<typeof ingoingByMethod>[0], 'salt' | 'strength' | 'weight'>) =>
    named(ingoingByMethod({ salt, strength: 6.25, weight, ...asked }), 'Ingoing')?.said;

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
    expect(ingoingByMethod({ salt, strength: 6.25, weight, method })).toEqual({ cannot: expect.stringMatching(/give|Give/) });
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
    expect(resultsOf(outcome).map(({ said }) => said)).toEqual(['4 %', '29 %', '4.286', '3.226 %', 'shelf stable', 'refrigeration']);
  });

  test('without water activity nothing is said of how it keeps', () => {
    expect(resultsOf(compositionByAnalysis({ ...sausage, pH: 4.9 })).map(({ what }) => what)).toEqual([
      'Added water',
      'Fat and added water',
      'Moisture to protein',
      'Salt in the water phase',
    ]);
  });

  test.each([{ protein: 0 }, { moisture: NaN }, { fat: 101 }, { pH: 15, aw: 0.9 }])('%j is refused', (wrong) => {
    expect(compositionByAnalysis({ ...sausage, ...wrong })).toHaveProperty('cannot');
  });
});

describe('Listeria in a chilled pack', () => {
  test('is an estimate inside the range and refused, naming the figure, outside', () => {
    const product = { waterPhaseSalt: 3.5, pH: 6.1 };
    expect(named(listeriaInThePack(product, { celsius: 5, hours: 240 }), 'To a hundredfold')?.said).toMatch(/days/);
    const salty = listeriaInThePack({ waterPhaseSalt: 9, pH: 5 }, { celsius: 2, hours: 240 });
    expect(named(salty, 'To a hundredfold')).toMatchObject({ said: 'no growth predicted' });
    expect(listeriaInThePack(product, { celsius: 60, hours: 240 })).toEqual({ cannot: expect.stringContaining('celsius') });
  });
});
