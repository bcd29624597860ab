import { describe, expect, test } from 'vitest';
import { estimateGrowth } from '../../growth/estimate-growth';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { atMostOneLogGrown } from '../../limit-sets/fsis-processes';
import { coolingFromCooking, coolingUncured } from '../../limit-sets/fsis-stabilization';
import type { CoolingLimit } from './cooling-limit';
import { seriesOf } from '../../limits/series-of';
import { MINUTE, type Point, reads, judge } from './judge-from-cooking.test-data';

const every = (from: number, to: number, step: number, value: number): Point[] =>
  Array.from({ length: (to - from) / step + 1 }, (_, i): Point => [from + i * step, value]);
/** Invented: to 50 °F within 90 min of the end of cooking. */
const fromTheEnd: CoolingLimit = {
  ...coolingFoodCode,
  stages: [{ to: { '°F': 5000, '°C': 1000 }, withinSeconds: 90 * 60, counted: 'end of cooking' }],
};

describe('an end of cooking written down late', () => {
  test('does not shorten option 1: 35 min too long, whatever was recorded', () => {
    const chill: Point[] = [
      [0, 150],
      [60, 131],
      [120, 100],
      [185, 80],
      [400, 40],
    ];
    for (const end of [undefined, 0, 59, 60, 61, 100, 119, 120, 150, 185, 400]) {
      expect([end, judge(chill, coolingUncured, end)]).toMatchObject([
        end,
        { kind: 'missed', figures: { over: { value: '2100000', unit: 'ms' } } },
      ]);
    }
  });

  test('does not shorten the Food Code’s first two hours', () => {
    const chill: Point[] = [
      [0, 150],
      [60, 136],
      [150, 100],
      [215, 70],
      [420, 41],
    ];
    expect(judge(chill, coolingFoodCode, 100)).toMatchObject({
      kind: 'missed',
      finding: 'cooling-too-late',
      figures: {
        stage: { from: { value: '135', unit: '°F' }, to: { value: '70', unit: '°F' } },
        to: { value: '70', unit: '°F' },
        allowed: { value: '7200000', unit: 'ms' },
        from: { value: '135', unit: '°F' },
        took: { value: '9300000', unit: 'ms' },
        over: { value: '2100000', unit: 'ms' },
      },
    });
  });

  test('does not stand for the start of a chill that was never seen hot', () => {
    const chill: Point[] = [
      [-30, 100],
      [10, 95],
      [60, 80],
      [300, 40],
    ];
    expect(judge(chill, coolingUncured, -60)).toMatchObject({ kind: 'missed' });
    expect(judge(chill, coolingUncured, 0)).toMatchObject({
      kind: 'undetermined',
      finding: 'cooling-end-of-cooking-late',
    });
    expect(judge(chill, coolingUncured, -30).kind).toBe('undetermined');
    expect(judge(chill, coolingUncured, -31).kind).toBe('missed');
    // By the readings alone it fell too long already, however late it began before them.
    expect(
      judge(
        [
          [-40, 100],
          [10, 95],
          [60, 80],
          [300, 40],
        ],
        coolingUncured,
        0,
      ).kind,
    ).toBe('missed');
  });

  test('does not take growth out of the chill', () => {
    const chill: Point[] = [[0, 150], ...every(30, 240, 15, 115), [300, 80], [330, 48]];
    const limit = { ...atMostOneLogGrown, longestGapSeconds: 3600 };
    for (const end of [0, 200, 299, 300, 320, 330]) expect([end, judge(chill, limit, end).kind]).toEqual([end, 'missed']);
    const estimates = [0, 299, 300].map((end) =>
      estimateGrowth(seriesOf(reads(chill)).temperatures, 'mixed or unknown', { cookingEnded: end * MINUTE }),
    );
    expect(estimates[1]).toEqual(estimates[0]);
    expect(estimates[2]).toEqual(estimates[0]);
  });

  test('does not bring the start of chilling into its hour and a half: option 2', () => {
    const slow: Point[] = [
      [0, 160],
      [30, 150],
      [60, 140],
      [115, 119],
      [300, 55],
    ];
    expect(judge(slow, coolingFromCooking, 0).kind).toBe('undetermined');
    expect(judge(slow, coolingFromCooking, 55)).toMatchObject({ kind: 'undetermined', finding: 'chill-start-end-late' });
    const quick: Point[] = [
      [0, 160],
      [30, 150],
      [60, 119],
      [300, 55],
    ];
    expect(judge(quick, coolingFromCooking, 0)).toMatchObject({ kind: 'met' });
  });

  test('does not shorten option 2’s own six hours', () => {
    const chill: Point[] = [
      [0, 150],
      [50, 121],
      [60, 100],
      [414, 55],
    ];
    const own = { ...coolingFromCooking, startWithinSeconds: undefined };
    for (const end of [0, 50, 55, 60, 100]) expect([end, judge(chill, own, end).kind]).toEqual([end, 'missed']);
    expect(
      judge(
        [
          [0, 150],
          [50, 121],
          [55, 118],
          [414, 56],
          [420, 55],
        ],
        own,
        55,
      ).kind,
    ).toBe('missed');
    expect(judge(chill, coolingFromCooking, 55).kind).toBe('missed');
  });

  test('starts no clock that counts from it', () => {
    const chill: Point[] = [
      [0, 160],
      [40, 120],
      [80, 60],
      [95, 50],
    ];
    expect(judge(chill, fromTheEnd, 30).kind).toBe('undetermined');
    expect(judge(chill, fromTheEnd, 0).kind).toBe('missed');
    expect(
      judge(
        [
          [0, 160],
          [40, 120],
          [80, 60],
          [125, 50],
        ],
        fromTheEnd,
        30,
      ).kind,
    ).toBe('missed');
  });

  test('is told from a late reading of the heating, by more than the noise and the error of the thermometer', () => {
    const after = (first: number): Point[] => [
      [-20, 150],
      [5, first],
      [60, 50],
    ];
    expect(judge(after(151), fromTheEnd, 0).kind).toBe('met');
    expect(judge(after(150.9), fromTheEnd, 0).kind).toBe('undetermined');
    const instrumentError = { hundredths: 100, unit: '°F' as const };
    const lower: CoolingLimit = { ...fromTheEnd, stages: [{ to: { '°F': 5200 }, withinSeconds: 5400, counted: 'end of cooking' }] };
    expect(judge(after(152.9), lower, 0, { instrumentError }).kind).toBe('undetermined');
    expect(judge(after(153), lower, 0, { instrumentError }).kind).toBe('met');
  });

  test('of two values of one instant, the hotter before it and the colder after it count', () => {
    expect(
      judge(
        [
          [-20, 130],
          [-20, 155],
          [5, 152],
          [60, 50],
        ],
        fromTheEnd,
        0,
      ).kind,
    ).toBe('undetermined');
    expect(
      judge(
        [
          [-20, 130],
          [5, 152],
          [5, 129],
          [60, 50],
        ],
        fromTheEnd,
        0,
      ).kind,
    ).toBe('undetermined');
    expect(
      judge(
        [
          [-20, 130],
          [5, 152],
          [60, 50],
        ],
        fromTheEnd,
        0,
      ).kind,
    ).toBe('met');
  });
});
