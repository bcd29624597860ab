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
    expect(judge(at(20, 85))).toMatchObject({
      kind: 'met',
      finding: 'chill-start-in-time',
      figures: { took: { value: '5100000', unit: 'ms' }, within: { value: '5400000', unit: 'ms' }, spare: { value: '300000', unit: 'ms' } },
    });
    expect(judge(at(20, 99, 95))).toMatchObject({
      kind: 'missed',
      finding: 'chill-start-too-late',
      figures: { took: { value: '5940000', unit: 'ms' }, within: { value: '5400000', unit: 'ms' }, over: { value: '540000', unit: 'ms' } },
    });
  });

  test('before the end of cooking names both times to be checked', () => {
    expect(judge(at(-5))).toMatchObject({
      finding: 'chill-start-before-the-end',
      figures: { askedAt: 'Into the chiller', took: { value: '300000', unit: 'ms' } },
    });
  });

  test('was answered nowhere: the answer to give is named, or what else shows it', () => {
    expect(judge(at())).toMatchObject({
      kind: 'undetermined',
      finding: 'chill-start-not-shown',
      figures: { within: { value: '5400000', unit: 'ms' }, askedAt: 'Into the chiller', from: { value: '120', unit: '°F' } },
    });
    expect(judge(undefined)).toMatchObject({
      finding: 'chill-start-not-shown',
      figures: { within: { value: '5400000', unit: 'ms' }, from: { value: '120', unit: '°F' } },
    });
    const fromTheEnd: CoolingLimit = {
      ...coolingFoodCode,
      startWithinSeconds: 1800,
      stages: [{ to: { '°F': 5500 }, withinSeconds: 6 * 3600, counted: 'end of cooking' }],
    };
    expect(judge(at(), {}, bench, fromTheEnd)).toMatchObject({
      finding: 'chill-start-not-shown',
      figures: { within: { value: '1800000', unit: 'ms' }, askedAt: 'Into the chiller' },
    });
    expect(judge(at(30), {}, bench, fromTheEnd)?.kind).toBe('met');
    expect(judge(undefined, {}, bench, fromTheEnd)).toMatchObject({
      finding: 'chill-start-not-shown',
      figures: { within: { value: '1800000', unit: 'ms' } },
    });
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
      finding: 'chill-start-to-come',
      figures: { askedAt: 'Into the chiller' },
    });
    expect(judge(kept(95, 20))?.kind).toBe('undetermined');
    expect(judge(kept(80, 600))?.kind).toBe('met');
    expect(judge(at(80), { now: 77 * MINUTE })?.kind).toBe('undetermined');
    expect(judge(at(NaN))).toMatchObject({
      finding: 'chill-start-not-shown',
      figures: { within: { value: '5400000', unit: 'ms' }, askedAt: 'Into the chiller', from: { value: '120', unit: '°F' } },
    });
  });

  test('after the core had come down already is judged by its own time, met or missed: it began then or before', () => {
    const down: Point[] = [
      [10, 150],
      [39, 121],
      [40, 119],
      [300, 55],
    ];
    expect(judge(at(40), {}, down)).toMatchObject({
      kind: 'met',
      finding: 'chill-start-in-time',
      figures: {
        took: { value: '2400000', unit: 'ms' },
        within: { value: '5400000', unit: 'ms' },
        spare: { value: '3000000', unit: 'ms' },
      },
    });
    expect(judge(at(90), {}, down)).toMatchObject({
      kind: 'met',
      finding: 'chill-start-in-time',
      figures: {
        took: { value: '5400000', unit: 'ms' },
        within: { value: '5400000', unit: 'ms' },
        cold: { value: '2400000', unit: 'ms' },
        upper: { value: '120', unit: '°F' },
        spare: { value: '0', unit: 'ms' },
      },
    });
    expect(judge(at(91), {}, down)).toMatchObject({
      kind: 'missed',
      finding: 'chill-start-too-late',
      figures: {
        took: { value: '5460000', unit: 'ms' },
        within: { value: '5400000', unit: 'ms' },
        cold: { value: '2400000', unit: 'ms' },
        upper: { value: '120', unit: '°F' },
        over: { value: '60000', unit: 'ms' },
      },
    });
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

  test('tells a core cold before it only where the thermometer leaves no doubt', () => {
    const cooled = (fahrenheit: number): Point[] => [
      [10, 150],
      [20, fahrenheit],
      [60, 119.5],
      [360, 40],
    ];
    const cold = (fahrenheit: number, points = cooled(fahrenheit)) =>
      judge(at(70), { instrumentError: { hundredths: 100, unit: '°F' } }, points)?.parts?.[0]?.figures.cold;
    expect(cold(120.5)).toBeUndefined();
    expect(cold(119)).toBeUndefined();
    expect(cold(118.9)).toEqual({ value: '1200000', unit: 'ms' });
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
    expect(judge(at(30), { startAt: undefined })).toMatchObject({ kind: 'undetermined', finding: 'chill-start-end-unknown' });
  });
});
