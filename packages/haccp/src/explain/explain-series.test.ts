import { describe, expect, test } from 'vitest';
import { coolingFoodCode } from '../limit-sets/food-code';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { forecastPoint } from '../forecast/forecast-point';
import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import { judgeRange } from '../kinds/range/judge-range';
import { salmonellaByTheMeatTable } from '../lethality/sets';
import type { CriticalLimit, CurveLimit } from '../limits/limit';
import type { LethalityLimit } from '../kinds/lethality/lethality-limit';
import type { RangeLimit } from '../kinds/range/range-limit';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import type { FindingKind } from '../thermal/finding';
import { explainSeries, type SeriesToExplain } from './explain-series';
import { explainerOf } from '../kinds/explainers';
import { plainPart } from '../limits/plain-part.test-data';
import { tellFinding } from './tell-finding';

const source = { citation: 'Arithmetic', edition: '', confirmed: true };

const linesOf = (limit: CriticalLimit, unit: '°F', peak: number) => explainerOf(limit).lines(limit, unit, peak);
const MINUTE = 60_000;
type Point = [minutes: number, fahrenheit: number];
const curve = (...points: Point[]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));
const judgedBy = (readings: CurveReading[], limits: CurveLimit[], context: CurveContext) =>
  limits.map((limit, index) => ({ limitId: `l${index}`, limit, verdict: judgeCurve(readings, limit, context) }));
const explain = (
  readings: CurveReading[],
  limits: CurveLimit[],
  context: CurveContext = { ended: true },
  more: Partial<SeriesToExplain> = {},
) =>
  explainSeries({
    readings,
    surroundings: [],
    judged: judgedBy(readings, limits, context),
    stages: [],
    context,
    species: 'pork',
    isCured: false,
    ...more,
  });

const chill: Point[] = [
  [0, 140],
  [20, 120],
  [80, 79],
  [300, 45],
  [340, 39],
];
const cook: Point[] = [
  [0, 40],
  [60, 100],
  [100, 140],
  [110, 150],
  [120, 151],
  [130, 150],
];

describe('what is found in a series', () => {
  test('is reported with what is done about it, and nothing is mended', () => {
    const readings = curve([0, 140], [5, 139], [10, 32], [15, 137], [20, 136], [25, 900]);
    const { findings, used, leftOut, drawing } = explain(readings, [cookedMeat65Log]);
    expect(findings.map(({ found, treatment }) => [plainPart(found), treatment])).toEqual([
      ['found finding-impossible 900 °F', 'left out'],
      ['found finding-spike 32 °F', 'counts only against the lot'],
    ]);
    expect({ used, leftOut }).toEqual({ used: 5, leftOut: 1 });
    expect(drawing.probes[0]?.points.map(({ value }) => value)).toEqual([140, 139, 32, 137, 136]);
  });

  test('a gap is one that the strictest limit of the point does not tolerate', () => {
    expect(explain(curve([0, 140], [20, 139]), [cookedMeat65Log, coolingUncured]).findings).toMatchObject([
      {
        kind: 'gap',
        found: { code: 'found', figures: { time: { value: '1200000' }, first: { value: '140' }, last: { value: '139' } } },
        whatToDo: { code: 'finding-gap.next' },
        from: 0,
        to: 20 * MINUTE,
      },
    ]);
    expect(explain(curve([0, 140], [20, 139]), [coolingUncured]).findings).toEqual([]);
    const range: RangeLimit = { kind: 'range', measured: 'temperature', max: { '°F': 4000 }, source };
    const judged = [{ limitId: 'r', limit: range, verdict: judgeRange(undefined, range) }];
    expect(explain(curve([0, 140], [20, 139]), [], undefined, { judged }).findings).toHaveLength(1);
  });

  test('a reading without a time has no instants', () => {
    const [one] = explain([{ at: NaN, temperature: degrees(140, '°F'), probe: 'core' }], [coolingUncured]).findings;
    expect(one).toMatchObject({ kind: 'no time', probe: 'core', found: { figures: { first: { value: '140', unit: '°F' } } } });
    expect([one?.from, one?.to]).toEqual([undefined, undefined]);
  });

  test('more readings than can be judged are neither looked through nor drawn', () => {
    const readings = Array.from({ length: 1_000_001 }, () => curve([0, 140])[0] as CurveReading);
    const { findings, used, leftOut, drawing } = explain(readings, [], undefined, { judged: [] });
    expect([findings, used, leftOut, drawing.probes]).toEqual([[], 0, 1_000_001, []]);
  });

  test('a value that is no number is counted, not said', () => {
    const finding = { kind: 'no number' as FindingKind, from: 0, to: 0, readings: 2, values: [undefined, undefined] };
    expect(tellFinding({ ...finding, treatment: 'left out' } as Parameters<typeof tellFinding>[0]).found).toEqual({
      code: 'found',
      figures: { kind: { code: 'finding-no-number' }, count: 2 },
    });
  });
});

describe('the drawing', () => {
  test('rules the lines of the limits, and brackets each crossing once', () => {
    const { lines, crossings, unit } = explain(curve(...chill), [coolingUncured]).drawing;
    expect(unit).toBe('°F');
    expect(lines.map(({ label, value }) => [plainPart(label), value])).toEqual([
      ['130 °F', 130],
      ['line-within 80 °F 1 h 30 min', 80],
      ['line-within 40 °F 5 h', 40],
    ]);
    expect(crossings.map(({ label, after, by }) => [plainPart(label), after / MINUTE, by / MINUTE])).toEqual([
      ['130 °F', 0, 20],
      ['80 °F', 20, 80],
      ['40 °F', 300, 340],
    ]);
  });

  test('has a mark only where the curve is', () => {
    const marks = (readings: CurveReading[], limit: CurveLimit, context: CurveContext = { ended: true }) =>
      explain(readings, [limit], context).drawing.crossings.map(({ label, straight, value }) => [
        plainPart(label),
        straight / MINUTE,
        value,
      ]);
    const shop = curve([0, 140], [20, 130], [100, 70], [300, 41]);
    expect(marks(shop, coolingFoodCode)).toEqual([
      ['135 °F', 10, 135],
      ['70 °F', 100, 70],
      ['41 °F', 300, 41],
    ]);
    // Never seen above 130 °F, and recorded as cooked before the first reading: it is passed nowhere on the curve.
    const cold = curve([10, 120], [60, 80], [300, 40]);
    expect(marks(cold, coolingUncured, { ended: true, startAt: 0 })).toEqual([
      ['80 °F', 60, 80],
      ['40 °F', 300, 40],
    ]);
    expect(marks(curve([0, 75], [60, 40]), coolingUncured)).toEqual([['40 °F', 60, 40]]);
    // With an error allowed for, the curve passes a little above a start and below an end.
    const wrong = { ended: true, instrumentError: { hundredths: 100, unit: '°F' as const } };
    expect(marks(curve([0, 141], [20, 121], [80, 79], [300, 39]), coolingUncured, wrong)).toEqual([
      ['130 °F', 10, 131],
      ['80 °F', 80, 79],
      ['40 °F', 300, 39],
    ]);
  });

  test('brackets a come-up where it rose to each figure', () => {
    const { crossings } = explain(curve(...cook), [comeUpWithinSixHours]).drawing;
    expect(crossings.map(({ label, straight }) => [plainPart(label), straight / MINUTE])).toEqual([
      ['50 °F', 10],
      ['130 °F', 90],
    ]);
    expect(explain(curve([0, 140]), [comeUpWithinSixHours]).drawing.crossings).toEqual([]);
  });

  test('shows about each line what the thermometer may be wrong by', () => {
    const bands = (hundredths: number, unit: '°C' | '°F') => {
      const context = { ended: true, instrumentError: { hundredths, unit } };
      return explain(curve(...chill), [coolingUncured], context).drawing.lines[2]?.band;
    };
    expect(bands(100, '°F')).toEqual([39, 41]);
    expect(bands(100, '°C')).toEqual([38.2, 41.8]);
    expect(bands(0, '°C')).toBeUndefined();
    const celsius = [{ at: 0, temperature: degrees(60, '°C') }];
    const [line] = explain(celsius, [coolingUncured], { ended: true, instrumentError: { hundredths: 180, unit: '°F' } }).drawing.lines;
    expect(line?.band?.map((value) => Number(value.toFixed(3)))).toEqual([53.4, 55.4]);
  });

  test('keeps the stages it is given and what the product lies in, in order of time', () => {
    const stages = [{ label: '130 → 80 °F', startAt: 0, endAt: 80, deadline: 90, kind: 'met' as const, limitId: 'l0' }];
    const { drawing } = explain(curve(...chill), [coolingUncured], undefined, {
      stages,
      surroundings: curve([10, 36], [0, 35]),
    });
    expect(drawing.stages).toEqual([{ label: '130 → 80 °F', startAt: 0, endAt: 80, deadline: 90, kind: 'met' }]);
    expect(drawing.surroundings.map(({ value }) => value)).toEqual([35, 36]);
  });

  test('without a reading has nothing in it but the lines', () => {
    const { drawing, lethality } = explain([], [cookedMeat65Log]);
    expect(drawing).toMatchObject({ unit: '°F', probes: [], crossings: [], lethality: [] });
    expect(lethality).toBeUndefined();
  });

  test('rules the lines of a range and no line for what has none', () => {
    const bounds = { min: { '°F': 3200 }, max: { '°C': 500 } };
    const range: RangeLimit = { kind: 'range', measured: 'temperature', ...bounds, source };
    expect(linesOf(range, '°F', 0).map(({ label, value }) => [plainPart(label), value])).toEqual([
      ['≥ 32 °F', 32],
      ['≤ 41 °F', 41],
    ]);
    expect(linesOf({ ...range, min: 1, max: undefined }, '°F', 0)).toEqual([]);
    const yes: CriticalLimit = { kind: 'attestation', statement: 'The label is right.', source };
    expect(linesOf(yes, '°F', 0)).toEqual([]);
  });

  test('of a table rules the hottest row that was reached, else the coldest', () => {
    expect(linesOf(cookedMeat65Log, '°F', 146.5).map(({ value }) => value)).toEqual([146]);
    expect(linesOf(cookedMeat65Log, '°F', 90).map(({ value }) => value)).toEqual([130]);
  });
});

describe('the warning', () => {
  const running = curve([0, 140], [10, 126], [20, 113.4], [30, 102], [40, 91.9], [50, 83]);
  const context = { ended: false, now: 50 * MINUTE };
  const judged = judgedBy(running, [coolingUncured], context);
  const around = { setPoint: degrees(34, '°F'), readings: [] };

  test('is drawn from the earliest to the latest arrival at the bound that is waited for', () => {
    const forecast = forecastPoint(judged, running, around, context);
    const { arrival } = explain(running, [coolingUncured], context, { forecast }).drawing;
    expect(arrival).toMatchObject({ label: { value: '80', unit: '°F' }, value: 80, deadline: 90 * MINUTE });
    expect(arrival?.earliest).toBeLessThanOrEqual(arrival?.latest ?? 0);
  });

  test('is not drawn where there is no arrival, nothing awaited, or another limit', () => {
    const forecast = forecastPoint(judged, running, around, context);
    const early = forecastPoint(judged, running, undefined, context);
    const drawn = (more: Partial<SeriesToExplain>, own = context) => explain(running, [coolingUncured], own, more).drawing.arrival;
    expect(drawn({})).toBeUndefined();
    expect(early && 'arrival' in early).toBe(false);
    expect(drawn({ forecast: early })).toBeUndefined();
    expect(drawn({ forecast: forecast && { ...forecast, limitId: 'other' } })).toBeUndefined();
    expect(drawn({ forecast }, { ...context, ended: true })).toBeUndefined();
  });
});

describe('lethality', () => {
  test('is named by its set, capped, and support for a process authority', () => {
    const { lethality, drawing } = explain(curve(...cook), [comeUpWithinSixHours, cookedMeat65Log]);
    expect(lethality?.judgedBy).toBe('printed row');
    expect(lethality?.figures.map(({ found }) => plainPart(found))).toContain(
      'killed-more-than 12 log10 set-salmonella-meat-table confirmed',
    );
    expect(drawing.lethality.map(({ name }) => plainPart(name))).toEqual(['set-salmonella-meat-table', 'set-listeria-70-for-2']);
    expect(drawing.lethality[0]?.points.at(-1)?.log10).toBe(12);
  });

  test('of a table that is not met comes with the rows that are there in all', () => {
    const broken = curve([0, 125], [3, 145.5], [6, 145.5], [8, 125], [9, 125], [11, 145.5], [14, 145.5], [16, 125]);
    const { lethality } = explain(broken, [cookedMeat65Log]);
    expect(lethality?.judgedBy).toBe('nothing yet');
    expect(lethality?.rowsInAll.map(plainPart)).toContain('row-for 145 °F 4 min');
    expect(lethality?.conditions[0]).toEqual({ code: 'estimate-of-other-products' });
  });

  test('is drawn by the set that a limit names, before the usual ones', () => {
    const set = { ...salmonellaByTheMeatTable, name: 'Salmonella, by letter 7' };
    const limit: LethalityLimit = {
      kind: 'lethality',
      set,
      log10: 650,
      floor: { '°F': 13000 },
      authority: 'A. Reed, letter 7',
      longestGapSeconds: 900,
      source,
    };
    expect(explain(curve(...cook), [limit]).drawing.lethality.map(({ name }) => plainPart(name))).toEqual([
      'Salmonella, by letter 7',
      'set-salmonella-meat-table',
      'set-listeria-70-for-2',
    ]);
  });

  test('is drawn of the probe that has the least', () => {
    const hot = curve(...cook).map((one) => ({ ...one, probe: 'hot' }));
    const cold = curve([0, 40], [130, 120]).map((one) => ({ ...one, probe: 'cold' }));
    const { drawing } = explain([...hot, ...cold], [cookedMeat65Log]);
    expect(drawing.lethality[0]?.points).toHaveLength(2);
  });
});

describe('growth', () => {
  test('is a coarse class with its claim; the exact figures stand in the data', () => {
    const { growth } = explain(curve(...chill), [coolingUncured]);
    expect(growth).toMatchObject({ as: 'uncured', claim: { code: 'growth-claim' }, underCure: undefined });
    expect(growth?.estimate?.class).toMatch(/log$/);
    expect(growth?.estimate?.byStraightLines.withLag).toBeGreaterThan(0);
    expect(growth?.estimate?.found.code).toMatch(/^grown/);
  });

  test('of a cured product has no figure but the worst case, and what was published', () => {
    const { growth } = explain(curve(...chill), [coolingUncured], undefined, { isCured: true });
    expect(growth?.as).toBe('worst case, as if uncured');
    expect(growth?.underCure?.because).toEqual({ code: 'no-open-model' });
    expect(growth?.underCure?.published.some(({ confirmed }) => !confirmed)).toBe(true);
  });

  test('of one reading is undetermined, and of no chill is not asked', () => {
    const { growth } = explain(curve([0, 140]), [coolingUncured]);
    expect(growth?.estimate).toBeUndefined();
    expect(growth?.undetermined?.because).toEqual({ code: 'one-reading-of-cooling' });
    expect(explain(curve(...cook), [cookedMeat65Log]).growth).toBeUndefined();
  });
});
