import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { atMostOneLogGrown } from '../../limit-sets/fsis-processes';
import { coolingCured, coolingFromCooking, coolingFromCookingStrict, coolingUncured } from '../../limit-sets/fsis-stabilization';
import { chillingAt } from './chilling-at.test-data';
import type { CoolingLimit } from './cooling-limit';
import type { SeriesLimit } from '../../limits/limit';
import { MINUTE, type Point, judge } from './judge-from-cooking.test-data';

/** Invented: to 50 °F within 90 min of the end of cooking. */
const fromTheEnd: CoolingLimit = {
  ...coolingFoodCode,
  stages: [{ to: { '°F': 5000, '°C': 1000 }, withinSeconds: 90 * 60, counted: 'end of cooking' }],
};

describe('a core heated again', () => {
  const first: Point[] = [
    [0, 150],
    [30, 120],
    [60, 100],
  ];
  const again: Point[] = [
    [190, 80],
    [400, 40],
  ];

  test('to its peak, before cooking ended, is a second cooking and counts from there', () => {
    expect(judge([...first, [110, 150], [120, 131], ...again], coolingUncured, 115)).toMatchObject({ kind: 'met' });
    expect(judge([...first, [110, 150], [120, 131], ...again], coolingUncured, 105).kind).toBe('missed');
    expect(judge([...first, [110, 150], [120, 131], ...again], coolingUncured, undefined).kind).toBe('missed');
  });

  test('less than to its peak is not: it counts from its first fall', () => {
    expect(judge([...first, [110, 149.9], [120, 131], ...again], coolingUncured, 115).kind).toBe('missed');
  });

  test('by no more than the noise of a probe is not either', () => {
    const bounced = (top: number): Point[] => [
      [0, 130.2],
      [30, 129.9],
      [60, top],
      [65, 129],
      [100, 80],
      [300, 40],
    ];
    expect(judge(bounced(130.8), coolingUncured, 60).kind).toBe('undetermined');
    expect(judge(bounced(130.9), coolingUncured, 60).kind).toBe('met');
  });
});

describe('a bench reading', () => {
  const chill: Point[] = [
    [10, 150],
    [80, 140],
    [100, 119],
    [360, 55],
  ];

  test('is not the start of chilling: only a recorded one, or a core below the bound in time', () => {
    expect(judge(chill, coolingFromCooking, 0)).toMatchObject({
      kind: 'undetermined',
      finding: 'chill-start-not-shown',
      figures: { within: { value: '5400000', unit: 'ms' }, from: { value: '120', unit: '°F' } },
    });
    expect(judge(chill, coolingFromCooking, 0, { chillingBegan: chillingAt(90 * MINUTE) }).kind).toBe('met');
    expect(judge(chill, coolingFromCooking, 0, { chillingBegan: chillingAt(91 * MINUTE) }).kind).toBe('missed');
    expect(judge(chill, coolingFromCooking, 10).kind).toBe('met');
  });

  test('with an end of cooking that came late, a recorded start can only show a miss', () => {
    const late: Point[] = [
      [0, 160],
      [60, 150],
      [110, 119],
      [360, 55],
    ];
    expect(judge(late, coolingFromCooking, 55, { chillingBegan: chillingAt(60 * MINUTE) }).kind).toBe('undetermined');
    expect(judge(late, coolingFromCooking, 55, { chillingBegan: chillingAt(146 * MINUTE) }).kind).toBe('missed');
  });
});

describe('whatever is recorded', () => {
  const limits = fc.constantFrom<SeriesLimit>(
    coolingUncured,
    coolingCured,
    coolingFoodCode,
    coolingFromCooking,
    coolingFromCookingStrict,
    { ...coolingFromCooking, startWithinSeconds: undefined },
    fromTheEnd,
    { ...atMostOneLogGrown, longestGapSeconds: 4 * 3600 },
  );
  /** From a peak on it falls, with the noise of a probe; before it there may be heating. */
  const chills = fc
    .record({
      heating: fc.array(fc.integer({ min: 400, max: 900 }), { maxLength: 3 }),
      peak: fc.integer({ min: 900, max: 1700 }),
      falls: fc.array(fc.tuple(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 0, max: 500 }), fc.integer({ min: -2, max: 2 })), {
        minLength: 2,
        maxLength: 9,
      }),
    })
    .map(({ heating, peak, falls }) => {
      const top = peak / 10;
      const rise = [...heating]
        .sort((a, b) => a - b)
        .map((tenths, i): Point => [(i - heating.length) * 30, Math.min(tenths / 10, top - 6)]);
      let [minutes, value] = [0, top];
      const fall = falls.map(([gap, by, noise]): Point => {
        minutes += gap;
        value = Math.max(34, value - by / 10);
        return [minutes, Math.min(value + noise / 10, top)];
      });
      return { rise, fall: [[0, top] as Point, ...fall] };
    });
  const errors = fc.constantFrom(undefined, { hundredths: 100, unit: '°F' as const });
  const ended = fc.boolean();

  test('no end of cooking later than the true one turns missed or undetermined into met', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(
        chills,
        limits,
        fc.integer({ min: 1, max: 900 }),
        errors,
        ended,
        ({ rise, fall }, limit, late, instrumentError, isEnded) => {
          const more = { instrumentError, ended: isEnded };
          const points = [...rise, ...fall];
          if (judge(points, limit, 0, more).kind !== 'met') expect(judge(points, limit, late, more).kind).not.toBe('met');
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('nor does one later than the record, nor one where there was none', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(chills, limits, fc.nat(600), fc.nat(300), errors, ({ fall }, limit, first, by, instrumentError) => {
        const more = { instrumentError };
        const later = judge(fall, limit, Math.max(1, first) + by, more).kind;
        if (judge(fall, limit, first, more).kind !== 'met') expect(later).not.toBe('met');
        if (judge(fall, limit, undefined, more).kind !== 'met') expect(later).not.toBe('met');
      }),
      { numRuns: 3000 },
    );
  });
});
