import { describe, expect, test } from 'vitest';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { coolingFromCooking } from '../../limit-sets/fsis-stabilization';
import { chillingAt } from './chilling-at.test-data';
import type { ChillingBegan, CurveContext } from '../../limits/curve-context';
import { judgeSeries } from '../../limits/judge-series';
import type { CoolingLimit } from './cooling-limit';
import { seriesOf } from '../../limits/series-of';

// FSIS Compliance Guidelines for Cooling (Appendix B), 1999, option 2: chilling begins within 90 min of cooking.
const MINUTE = 60_000;
type Point = [minutes: number, fahrenheit: number];
const bench: Point[] = [
  [10, 150],
  [80, 130],
  [100, 119],
  [360, 55],
];
const judge = (
  chillingBegan: ChillingBegan | undefined,
  more: Partial<CurveContext> = {},
  points = bench,
  limit: CoolingLimit = coolingFromCooking,
) =>
  judgeSeries(seriesOf(points.map(([minutes, value]) => ({ at: minutes * MINUTE, value, unit: '°F' }))), [limit], {
    ended: true,
    startAt: 0,
    chillingBegan,
    ...more,
  })[0];
const at = (...minutes: number[]) => chillingAt(...minutes.map((minute) => minute * MINUTE));

describe('that chilling began', () => {
  test.each([
    ['with the end of cooking', [0], 'met'],
    ['at the last minute', [90], 'met'],
    ['a minute late', [91], 'missed'],
    ['a minute before cooking ended', [-1], 'undetermined'],
    ['twice, in time both times', [20, 80], 'met'],
    ['twice, once too late', [20, 95], 'missed'],
    ['twice, once too late and once before cooking ended', [-5, 95], 'missed'],
    ['twice, once before cooking ended', [-5, 80], 'undetermined'],
  ])('%s', (_case, minutes, kind) => {
    expect(judge(at(...minutes))?.kind).toBe(kind);
  });

  test('says by how much, and of several by the worst', () => {
    expect(judge(at(20, 85))).toMatchObject({ kind: 'met', margin: '5 min to spare' });
    expect(judge(at(20, 99, 95))).toMatchObject({
      kind: 'missed',
      margin: '9 min too long',
      because: 'Chilling began 1 h 39 min after cooking; 1 h 30 min are allowed.',
    });
  });

  test('before the end of cooking names both times to be checked', () => {
    expect(judge(at(-5))).toMatchObject({
      because: 'Chilling is said to have begun 5 min before cooking ended.',
      next: 'Check the two times: correct the one at “Into the chiller”, or the time cooking ended.',
    });
  });

  test('was answered nowhere: the answer to give is named, or what else shows it', () => {
    expect(judge(at())).toMatchObject({
      kind: 'undetermined',
      next: 'Answer “Into the chiller” with its time, or hold the lot. A core read below 120 °F in that time shows it too.',
    });
    expect(judge(undefined)?.next).toBe(
      'The plan does not ask when chilling began. Add a core read below 120 °F in that time, or hold the lot.',
    );
    const fromTheEnd: CoolingLimit = {
      ...coolingFoodCode,
      startWithinSeconds: 1800,
      stages: [{ to: { '°F': 5500 }, withinSeconds: 6 * 3600, counted: 'end of cooking' }],
    };
    expect(judge(at(), {}, bench, fromTheEnd)?.next).toBe('Answer “Into the chiller” with its time, or hold the lot.');
    expect(judge(at(30), {}, bench, fromTheEnd)?.kind).toBe('met');
    expect(judge(undefined, {}, bench, fromTheEnd)?.next).toBe('The plan does not ask when chilling began: hold the lot.');
  });

  test('needs no answer where a core below the first figure in time shows it', () => {
    expect(
      judge(at(), {}, [
        [10, 150],
        [60, 119],
        [360, 55],
      ])?.kind,
    ).toBe('met');
  });

  test('at a moment that was yet to come shows nothing until it is corrected, neither met nor missed', () => {
    const kept = (minutes: number, kept: number): ChillingBegan => ({
      askedAt: 'Into the chiller',
      answers: [{ at: minutes * MINUTE, arrivedAt: kept * MINUTE }],
    });
    expect(judge(kept(80, 78))?.kind).toBe('met');
    expect(judge(kept(80, 77))).toMatchObject({
      kind: 'undetermined',
      because: 'Chilling is said to have begun later than that was recorded: it shows nothing.',
      next: 'Correct the time at “Into the chiller”, or hold the lot.',
    });
    expect(judge(kept(95, 20))?.kind).toBe('undetermined');
    expect(judge(kept(80, 600))?.kind).toBe('met');
    expect(judge(at(80), { now: 77 * MINUTE })?.kind).toBe('undetermined');
    expect(judge(at(NaN))?.because).toBe('Nothing shows that chilling began within 1 h 30 min of the end of cooking.');
  });

  test('after the core had come down already is judged by its own time, met or missed: it began then or before', () => {
    const down: Point[] = [
      [10, 150],
      [39, 121],
      [40, 119],
      [300, 55],
    ];
    expect(judge(at(40), {}, down)).toMatchObject({ kind: 'met', margin: '50 min to spare' });
    expect(judge(at(90), {}, down)).toMatchObject({
      kind: 'met',
      margin: '0 s to spare',
      because:
        'Chilling began 1 h 30 min after cooking; 1 h 30 min are allowed. Before that, 40 min after cooking, the core was at 120 °F or below.',
    });
    expect(judge(at(91), {}, down)).toMatchObject({ kind: 'missed', margin: '1 min too long' });
  });

  test('after the core had come down takes no time from the stage that counts from there', () => {
    // From 120 °F at 40 min; 6 h to 55 °F end at 400 min, whatever was answered.
    const by = (minutes: number, end: number) =>
      judge(at(minutes), {}, [
        [10, 150],
        [39, 121],
        [40, 119],
        [end, 55],
      ])?.kind;
    expect([by(80, 390), by(80, 420)]).toEqual(['met', 'missed']);
  });

  test('is no doubt where the core was cold before it was cooked', () => {
    expect(
      judge(at(30), {}, [
        [-90, 41],
        [-30, 110],
        [5, 160],
        [60, 125],
        [360, 55],
      ])?.kind,
    ).toBe('met');
  });

  test('while the end of cooking is not recorded says nothing', () => {
    expect(judge(at(30), { startAt: undefined })).toMatchObject({ kind: 'undetermined', next: 'Enter the time cooking ended.' });
  });
});
