import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addUpDegreeHours,
  boundOf,
  degreeHour,
  degreeHoursCelsius,
  degreeHoursFahrenheit,
  degrees,
  judgeFermentation,
  plain,
  prepareCurve,
  type CurveReading,
  type FermentationLimit,
  type TemperatureUnit,
} from '@larderbook/haccp';

const HOUR = 3_600_000;
type Point = readonly [hours: number, temperature: number];
const curve = (points: readonly Point[], unit: TemperatureUnit = '°F'): CurveReading[] =>
  points.map(([hours, value]) => ({ at: Math.round(hours * HOUR), temperature: degrees(value, unit) }));

/** Read every hour at constant temperatures, one after the other. */
function held(...steps: readonly (readonly [hours: number, temperature: number])[]): Point[] {
  let from = 0;
  return steps.flatMap(([hours, temperature], index) => {
    const own = Array.from({ length: hours + 1 }, (_, i): Point => [from + i, temperature]);
    from += hours;
    // A millisecond between two temperatures, so that the step is a step.
    return index === 0 ? own : own.map(([at, value], i): Point => (i === 0 ? [at + 1 / HOUR, value] : [at, value]));
  });
}
const judge = (points: readonly Point[], limit: FermentationLimit = degreeHoursFahrenheit) =>
  judgeFermentation(
    {
      chamber: curve(points, limit.base.unit),
      acid: [{ at: Math.round((points[points.length - 1]?.[0] ?? 0) * HOUR), pH: plain(5.3) }],
      startAt: 0,
      ended: true,
    },
    { ...limit, longestGapSeconds: 200 * 3600 },
  );

/** FSIS, Principles of Preservation of Shelf-Stable Dried Meat Products, 2005, p. 164. */
/** "650 °F·h" as a verdict has it. */
const figure = (said: string) => {
  const [value, unit] = said.split(' ');
  return { value, unit };
};

describe('degree-hours to pH 5.3', () => {
  test.each([
    ['80 °F for 55 h, the source’s own example', held([55, 80]), 'met', '1100 °F·h', '≤ 1200 °F·h'],
    ['90 °F for 40 h', held([40, 90]), 'missed', '1200 °F·h', '≤ 1000 °F·h'],
    ['110 °F for 18 h', held([18, 110]), 'met', '900 °F·h', '≤ 900 °F·h'],
    [
      '110 °F for 18.1 h',
      [
        [0, 110],
        [18.1, 110],
      ],
      'missed',
      '905 °F·h',
      '≤ 900 °F·h',
    ],
    ['100 °F for 22 h', held([22, 100]), 'met', '880 °F·h', '≤ 1000 °F·h'],
    ['58 °F for 20 h, then 80 °F for 30 h', held([20, 58], [30, 80]), 'met', '600 °F·h', '≤ 1200 °F·h'],
    // By straight lines 580; the warmer end of each stretch gives 18 + 72 + 392 + 168.
    [
      'base crossed at 2 h',
      [
        [0, 48],
        [3, 66],
        [6, 84],
        [20, 88],
        [26, 88],
      ],
      'met',
      '650 °F·h',
      '≤ 1200 °F·h',
    ],
  ] as const)('%s', (_case, points, kind, measured, limit) => {
    const verdict = judge(points);
    expect(verdict).toMatchObject({ kind, figures: { most: figure(measured), allowed: figure(limit.replace('≤ ', '')) } });
  });

  test('75 °F 10 h, 85 °F 10 h, 95 °F 14 h: 890, by the class of the hottest', () => {
    const verdict = judge(held([10, 75], [10, 85], [14, 95]));
    const figures = { most: figure('890 °F·h'), hottest: figure('95 °F'), allowed: figure('1000 °F·h') };
    expect(verdict).toMatchObject({ kind: 'met', figures });
  });

  // Longest hours at constant temperature: limit ÷ (T − 60).
  test.each([
    [68, 1200, 150],
    [70, 1200, 120],
    [75, 1200, 80],
    [80, 1200, 60],
    [85, 1200, 48],
    [86, 1200, 46.154],
    [88, 1200, 42.857],
    [90, 1000, 33.333],
    [95, 1000, 28.571],
    [98, 1000, 26.316],
    [100, 1000, 25],
    [101, 900, 21.951],
    [102, 900, 21.429],
    [105, 900, 20],
    [110, 900, 18],
    [115, 900, 16.364],
  ])('%s °F: %s °F·h, %s h', (fahrenheit, most, hours) => {
    const longest = Math.floor((most / (fahrenheit - 60)) * HOUR) / HOUR;
    expect(longest).toBeCloseTo(hours, 3);
    const atTheLongest = { kind: 'met', figures: { allowed: figure(`${most} °F·h`) } };
    expect(
      judge([
        [0, fahrenheit],
        [longest, fahrenheit],
      ]),
    ).toMatchObject(atTheLongest);
    expect(
      judge([
        [0, fahrenheit],
        [longest + 2 / HOUR, fahrenheit],
      ]).kind,
    ).toBe('missed');
  });
});

describe('the Celsius versions, 665, 555 and 500 °C·h from 15.6 °C, from memory', () => {
  test.each([
    [24, 79.167],
    [32, 40.549],
    [33, 31.897],
    [37, 25.935],
    [38, 22.321],
  ])('%s °C for %s h at the longest', (celsius, hours) => {
    expect(
      judge(
        [
          [0, celsius],
          [hours - 0.001, celsius],
        ],
        degreeHoursCelsius,
      ).kind,
    ).toBe('met');
    expect(
      judge(
        [
          [0, celsius],
          [hours + 0.001, celsius],
        ],
        degreeHoursCelsius,
      ).kind,
    ).toBe('missed');
  });

  test.each([
    ['10 h at 24, 10 h at 30, 15 h at 35 °C', held([10, 24], [10, 30], [15, 35]), '519 °C·h', '≤ 555 °C·h'],
    ['38 h at 26 °C', held([38, 26]), '395.2 °C·h', '≤ 665 °C·h'],
    ['55 h at 26 °C', held([55, 26]), '572 °C·h', '≤ 665 °C·h'],
  ])('%s', (_case, points, measured, limit) => {
    const verdict = judge(points, degreeHoursCelsius);
    expect(verdict).toMatchObject({ kind: 'met', figures: { most: figure(measured), allowed: figure(limit.replace('≤ ', '')) } });
    expect(degreeHoursCelsius.source.confirmed).toBe(false);
  });

  test('one base per plan: 15.6 °C is 60.08 °F', () => {
    expect(boundOf({ '°C': 1560 })['°C'] - boundOf({ '°F': 6000 })['°F']).toBe(40);
  });
});

/** The clipped trapezoid in 40-digit decimals: dt (h1 + h2)/2 above the base, dt h² ÷ 2|T2 − T1| across it. */
const Exact = Decimal.clone({ precision: 40 });
function inDecimals(readings: readonly CurveReading[], base: number): number {
  let sum = new Exact(0);
  readings.forEach(({ at, temperature }, index) => {
    const before = readings[index - 1];
    if (!before) return;
    const dt = new Exact(at - before.at).div(HOUR);
    const [a, b] = [before, { temperature }].map((one) => new Exact(one.temperature.hundredths).div(100).minus(base));
    const [low, high] = [Exact.min(a as Decimal, b as Decimal), Exact.max(a as Decimal, b as Decimal)];
    if (low.gte(0)) sum = sum.plus(dt.times(low.plus(high)).div(2));
    else if (high.gt(0)) sum = sum.plus(dt.times(high.pow(2)).div(high.minus(low).times(2)));
  });
  return sum.toNumber();
}

const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 6 * HOUR }), fc.integer({ min: 4000, max: 11_000 })), {
  minLength: 2,
  maxLength: 20,
});
const readingsOf = (taken: readonly (readonly [number, number])[], start = 0): CurveReading[] => {
  let at = start;
  return taken.map(([step, hundredths]) => {
    at += step;
    return { at, temperature: { hundredths, unit: '°F' } };
  });
};
const base = boundOf({ '°F': 6000 })['°F'];
const sum = (readings: readonly CurveReading[], longestGap = Infinity) =>
  addUpDegreeHours(prepareCurve(readings), base, longestGap, { until: Infinity, lead: 0, tail: 0 });

test('the exact sum is the clipped trapezoid', () => {
  fc.assert(
    fc.property(steps, (taken) => {
      const readings = readingsOf(taken);
      const { straight } = sum(readings);
      expect(Number(straight) / Number(degreeHour('°F'))).toBeCloseTo(inDecimals(readings, 60), 6);
    }),
  );
});

test('neither the sure nor the straight ever passes the most; over a gap the sure not the straight either', () => {
  fc.assert(
    fc.property(steps, fc.integer({ min: 0, max: 6 * HOUR }), (taken, longestGap) => {
      const { sure, straight, most } = sum(readingsOf(taken), longestGap);
      expect([sure <= most, straight <= most]).toEqual([true, true]);
      expect(sum(readingsOf(taken), 0).sure <= straight).toBe(true);
    }),
  );
});

test('all times shifted change nothing, and a warmer chamber never means fewer', () => {
  fc.assert(
    fc.property(steps, fc.integer({ min: -1e9, max: 1.8e12 }), fc.integer({ min: 0, max: 500 }), (taken, start, by) => {
      const here = sum(readingsOf(taken)).straight;
      expect(sum(readingsOf(taken, start)).straight).toBe(here);
      const warmer = readingsOf(taken.map(([step, hundredths]) => [step, hundredths + by]));
      expect(sum(warmer).straight + BigInt(taken.length)).toBeGreaterThanOrEqual(here);
    }),
  );
});

test('whatever comes in, nothing is thrown, and nothing is met without a pH', () => {
  const number = fc.oneof(fc.double(), fc.integer({ min: -5000, max: 40_000 }));
  const temperature = fc.record({ hundredths: number, unit: fc.constant('°F' as const) });
  const acid = fc.record({ at: number, pH: fc.record({ thousandths: number }) });
  const fermentation = fc.record(
    {
      chamber: fc.array(fc.record({ at: number, temperature }), { maxLength: 8 }),
      acid: fc.array(acid, { maxLength: 4 }),
      startAt: fc.double(),
      ended: fc.boolean(),
    },
    { requiredKeys: ['chamber', 'acid', 'ended'] },
  );
  fc.assert(
    fc.property(fermentation, (one) => {
      const { kind } = judgeFermentation(one, degreeHoursFahrenheit);
      if (one.acid.every(({ pH }) => !(pH.thousandths <= 5300))) expect(kind).not.toBe('met');
    }),
  );
});
