import { describe, expect, test } from 'vitest';
import {
  addUpLethality,
  boundOf,
  comeUpWithinSixHours,
  coolingCured,
  coolingOf,
  coolingUncured,
  degrees,
  fallsBelow,
  judgeCurve,
  lethalityAtFloors,
  listeria70For2,
  listeriaHeatedSlowly,
  prepareCurve,
  lethalityFound,
  risesTo,
  salmonellaByTheMeatTable,
  timeInBand,
  type CurveReading,
} from '@larderbook/haccp';
import { byQuadrature, type Point } from './by-quadrature';

const MINUTE = 60_000;
const curve = (...points: Point[]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));
const spansOf = (...of: Parameters<typeof coolingOf>) => coolingOf(...of)?.spans ?? [];
const at = (fahrenheit: number) => boundOf({ '°F': fahrenheit * 100 });
const minutes = (instants: number[]) => instants.map((instant) => instant / MINUTE);
const [S, UK, SLOW] = [salmonellaByTheMeatTable, listeria70For2, listeriaHeatedSlowly];

/**
 * Straight-line crossings, t1 + (B − T1)(t2 − t1)/(T2 − T1), of invented curves: worked out beforehand in 40-digit
 * decimals.
 * The guideline speaks of the total time between two temperatures (FSIS-GD-2021-14, pp. 23-24).
 */
describe('crossings and times between bounds, in minutes', () => {
  const heating = curve([0, 38], [47, 55.5], [121, 82], [180, 101.3], [238, 118], [291, 133.4], [330, 146], [352, 152.2]);
  const cooling = curve(
    ...(
      [
        [0, 151.8],
        [22, 139],
        [61, 118.5],
        [140, 91],
        [171, 92.2],
        [205, 83],
        [249, 74.1],
        [420, 55],
        [611, 46.2],
      ] as const
    ).map(([minute, value]): [number, number] => [minute, value]),
    [700, 43.8],
    [790, 40.9],
    [830, 39.2],
  );
  const sparse = curve([0, 141], [300, 79], [900, 44]);
  const bouncing = curve([0, 132], [100, 90], [150, 78], [170, 84], [230, 79], [300, 60]);
  const straightBetween = (readings: CurveReading[], low: number, high: number) =>
    timeInBand(prepareCurve(readings), at(low), at(high), Infinity, readings.length - 1).straight / MINUTE;

  test('a come-up', () => {
    expect(minutes(risesTo(heating, at(50)))).toEqual([expect.closeTo(32.228571, 6)]);
    expect(minutes(risesTo(heating, at(130)))).toEqual([expect.closeTo(279.298701, 6)]);
    expect(straightBetween(heating, 50, 130)).toBeCloseTo(247.07013, 6);
  });

  test.each([
    [130, 39.121951],
    [120, 58.146341],
    [80, 219.831461],
    [55, 420],
    [45, 655.5],
    [40, 811.176471],
  ])('a chill falls below %s °F', (bound, minute) => {
    expect(minutes(fallsBelow(cooling, at(bound))).at(-1)).toBeCloseTo(minute, 5);
  });

  test('towards an air of 36 °F three readings pass their bounds earlier than by straight lines', () => {
    const chiller = degrees(36, '°F');
    const [first, second] = spansOf(sparse, coolingCured, { ended: true, chiller });
    const chilled = [first?.passings?.start, second?.passings?.start, second?.passings?.end].map((one) => one?.chilled);
    const printed = [37.188, 292.275, 857.979].map((minute) => expect.closeTo(minute, 3) as number);
    expect(chilled.map((instant) => (instant ?? NaN) / MINUTE)).toEqual(printed);
  });

  test('its stages by straight lines, and the longest the readings allow', () => {
    const [first, second] = spansOf(cooling, coolingUncured, { ended: true });
    expect(straightOf(first)).toBeCloseTo(180.7095, 4);
    expect(straightOf(second)).toBeCloseTo(591.345, 4);
    expect(longestOf(first)).toBe(227);
    const [, slow] = spansOf(cooling, coolingCured, { ended: true });
    expect(straightOf(slow)).toBeCloseTo(435.6685, 4);
  });

  test('three readings cannot show a slow second stage: 300 and 900 min in the worst case', () => {
    const [first, second] = spansOf(sparse, coolingCured, { ended: true });
    expect(straightOf(first)).toBeCloseTo(295.161 - 53.226, 2);
    expect(minutes([130, 80, 45].flatMap((bound) => fallsBelow(sparse, at(bound))))).toEqual([
      expect.closeTo(53.226, 3),
      expect.closeTo(295.161, 3),
      expect.closeTo(882.857, 3),
    ]);
    expect(straightOf(second)).toBeCloseTo(587.696, 3);
    expect([longestOf(first), longestOf(second)]).toEqual([300, 900]);
    expect(judgeCurve(sparse, coolingCured, { ended: true }).kind).toBe('undetermined');
  });

  test('a bounce: the stage ends at the last crossing', () => {
    expect(minutes(fallsBelow(bouncing, at(80)))).toEqual([expect.closeTo(141.666667, 6), expect.closeTo(218, 6)]);
    expect(straightBetween(bouncing, 80, 130)).toBeCloseTo(198.238095, 6);
    const [first] = spansOf(bouncing, coolingUncured, { ended: true });
    expect(straightOf(first)).toBeCloseTo(213.238095, 6);
  });

  test('the chill above is missed uncured and its first stage is met cured', () => {
    expect(judgeCurve(cooling, coolingUncured, { ended: true }).kind).toBe('missed');
    expect(spansOf(cooling, coolingCured, { ended: true })[0]?.verdict).toBe('met');
  });
});

describe('one lot from the raw to the cold: cook, then chill, all straight lines', () => {
  const cook: Point[] = [
    [0, 38],
    [47, 55.5],
    [121, 82],
    [180, 101.3],
    [238, 118],
    [291, 133.4],
    [330, 146],
    [352, 152.2],
  ];
  const chill: Point[] = [
    [0, 151.8],
    [22, 139],
    [61, 118.5],
    [140, 91],
    [171, 92.2],
    [205, 83],
    [249, 74.1],
    [420, 55],
    [611, 46.2],
    [700, 43.8],
    [790, 40.9],
    [830, 39.2],
  ];
  const lot = curve(...cook, ...chill.map(([minute, value]): Point => [minute + 360, value]));
  const floor130 = (130 - 32) / 1.8;

  test.each([
    ['Salmonella', S, 284.669412, 283.293579],
    ['Listeria, 70 °C for 2 min', UK, 41.54575, 40.731269],
    ['Listeria, heated slowly', SLOW, 21.349757, 20.813436],
  ])('%s', (_case, set, all, above130) => {
    const at = (floorCelsius: number) => addUpLethality(lot, set, { floorCelsius, longestGap: Infinity }).byStraightLines;
    expect(at(-Infinity)).toBeCloseTo(all, 6);
    expect(at(floor130)).toBeCloseTo(above130, 6);
    const whole = [...cook, ...chill.map(([minute, value]): Point => [minute + 360, value])];
    const celsius = whole.map(([minute, value]): Point => [minute, (value - 32) / 1.8]);
    expect(at(-Infinity) / byQuadrature(celsius, set)).toBeCloseTo(1, 9);
  });

  test('the trapezoid, 368.3, and the colder end, 137.1, are not what is said; above 12 log no figure is', () => {
    const [usual, ...more] = lethalityAtFloors(lot, S);
    expect(usual?.byStraightLines).not.toBeCloseTo(368.318388, 0);
    expect(usual?.byStraightLines).not.toBeCloseTo(137.078529, 0);
    expect(more).toHaveLength(1);
    expect(usual && lethalityFound(usual)).toMatchObject({ code: 'killed-more-than', figures: { logs: { value: '12', unit: 'log10' } } });
  });

  test('its come-up, its stages and its verdicts', () => {
    const bound = (fahrenheit: number) => boundOf({ '°F': fahrenheit * 100 });
    const heated = prepareCurve(lot.slice(0, cook.length));
    expect(risesTo(heated.colder, bound(50)).map((at) => at / MINUTE)).toEqual([expect.closeTo(32.228571, 6)]);
    const band = timeInBand(heated, bound(50), bound(130), Infinity, cook.length - 1);
    expect(band.straight / MINUTE).toBeCloseTo(247.0701, 4);
    expect(judgeCurve(heated.colder, comeUpWithinSixHours, { ended: true }).kind).toBe('met');

    const straight = (limit: typeof coolingCured, stage: number) => {
      const span = spansOf(lot, limit, { ended: true, startAt: 352 * MINUTE })[stage];
      return ((span?.straight?.endAt ?? NaN) - (span?.straight?.startAt ?? NaN)) / MINUTE;
    };
    expect(straight(coolingUncured, 0)).toBeCloseTo(180.7095, 4);
    expect(straight(coolingCured, 1)).toBeCloseTo(435.6685, 4);
    expect(straight(coolingUncured, 1)).toBeCloseTo(591.345, 4);
    const [first] = spansOf(lot, coolingCured, { ended: true, startAt: 352 * MINUTE });
    expect(((first?.endAt ?? NaN) - (first?.startAt ?? NaN)) / MINUTE).toBe(227);
    expect(judgeCurve(lot, coolingUncured, { ended: true, startAt: 352 * MINUTE }).kind).toBe('missed');
    expect(judgeCurve(lot, coolingCured, { ended: true, startAt: 352 * MINUTE }).kind).toBe('met');
  });
});

type Span = ReturnType<typeof spansOf>[number];
const straightOf = (span: Span | undefined) => ((span?.straight?.endAt ?? NaN) - (span?.straight?.startAt ?? NaN)) / MINUTE;
const longestOf = (span: Span | undefined) => ((span?.endAt ?? NaN) - (span?.startAt ?? NaN)) / MINUTE;
