import { describe, expect, test } from 'vitest';
import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { judgeFigureRead } from '../kinds/figure/judge-figure-read';
import type { CurveContext } from '../limits/curve-context';
import { judgeSeries } from '../limits/judge-series';
import type { Series } from '../limits/series';
import type { DegreeHoursLimit } from '../kinds/degree-hours/fermentation-limit';
import type { FreezingLimit } from '../kinds/freezing/freezing-limit';
import type { GrowthLimit } from '../kinds/growth/growth-limit';
import type { LethalityLimit } from '../kinds/lethality/lethality-limit';
import type { SeriesLimit } from '../limits/limit';
import { plain } from '../limits/measurement';
import { salmonellaByTheMeatTable } from '../lethality/sets';
import { degrees } from '../quantity/degrees';
import { massOf } from '../quantity/weigh';
import type { CurveReading } from '../thermal/curve';
import { explainFigure } from '../kinds/figure/explain-figure';
import { explainerOf } from '../kinds/explainers';
import { explainLimit } from './explain-limit';
import { plainPart } from '../limits/plain-part.test-data';

const source = { citation: 'Arithmetic', edition: '', confirmed: true };

const MINUTE = 60_000;
type Point = [minutes: number, fahrenheit: number];
const curve = (...points: Point[]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F'), id: `r${minutes}` }));
const nothing: Series = { temperatures: [], acid: [], weights: [] };
function explain(limit: SeriesLimit, series: Partial<Series>, context: CurveContext = { ended: true }) {
  const all = { ...nothing, ...series };
  const [verdict] = judgeSeries(all, [limit], context);
  if (!verdict) throw new Error('each limit has a verdict');
  return explainLimit(limit, verdict, { alone: [], series: all, context });
}
type Explained = ReturnType<typeof explain>;
const worked = ({ steps }: Explained) => steps.map(({ putIn, gives }) => `${plainPart(putIn)} → ${plainPart(gives)}`);
const rests = ({ restsOn }: Explained) => restsOn.map(({ id, is, role }) => `${id ?? plainPart(is)}: ${plainPart(role)}`);
const byVerdict = (explained: Explained) => expect(worked(explained)).toEqual(['(measured) → (because)']);

describe('a kill of so many logs', () => {
  const limit: LethalityLimit = {
    kind: 'lethality',
    set: salmonellaByTheMeatTable,
    log10: 650,
    floor: { '°F': 13000 },
    authority: 'A. Reed, letter 7',
    longestGapSeconds: 900,
    source,
  };

  test('is shown by the law of its set and the readings from its floor up', () => {
    const cook = curve([0, 100], [10, 140], [20, 150], [30, 152], [40, 120]);
    const explained = explain(limit, { temperatures: cook });
    expect(worked(explained).slice(0, 2)).toEqual([
      '1.714 min × 10^((60 °C − T) ÷ 5.56 °C) → d-from 130 °F',
      `hot-readings 3 130 °F 10' 30' → (measured)`,
    ]);
    expect(rests(explained)).toEqual(['r10: first-at-or-above 130 °F', 'r30: last-held-at-or-above 130 °F']);
    expect(explained.assumptions).toContainEqual({ code: 'supported-by', figures: { authority: 'A. Reed, letter 7' } });
  });

  test('of one hot reading rests on it once, and of none on its verdict', () => {
    expect(rests(explain(limit, { temperatures: curve([0, 100], [10, 140]) }))).toHaveLength(1);
    byVerdict(explain(limit, { temperatures: curve([0, 100], [10, 120]) }));
    const unknown = { ended: true, instrumentError: { hundredths: NaN, unit: '°F' as const } };
    byVerdict(explain(limit, { temperatures: curve([0, 140], [10, 150]) }, unknown));
  });

  test('is ruled at its floor', () => {
    expect(explainerOf(limit).lines(limit, '°F', 150)).toEqual([
      { value: 130, label: { code: 'counted-from-figure', figures: { figure: { value: '130', unit: '°F' } } } },
    ]);
  });
});

describe('growth while cooling', () => {
  const species = 'mixed or unknown';
  const limit: GrowthLimit = { kind: 'growth', species, log10: 100, longestGapSeconds: 900, source };

  test('is shown by every set that may apply, in classes', () => {
    const explained = explain(limit, { temperatures: curve([0, 140], [10, 120], [20, 100], [30, 45]) });
    expect(explained.steps.map(({ what }) => what)).toHaveLength(4);
    expect(worked(explained)[0]).toContain('b 0.05, Tmin 10.15 °C');
    expect(rests(explained)).toEqual(['r0: first-of-cooling', 'r30: last-of-cooling']);
  });

  test('counts from the end of cooking, rests on one reading once and on none on its verdict', () => {
    const context = { ended: true, startAt: 20 * MINUTE };
    const warmed = curve([0, 90], [20, 140]);
    expect(rests(explain(limit, { temperatures: warmed }, context))).toEqual(['r20: first-of-cooling']);
    const falling = curve([0, 140], [20, 100]);
    expect(rests(explain(limit, { temperatures: falling }, context))[0]).toBe('r0: first-of-cooling');
    byVerdict(explain(limit, {}));
  });
});

describe('degree-hours', () => {
  const limit: DegreeHoursLimit = { ...degreeHoursFahrenheit, kind: 'degreeHours' };
  const acid = [
    { at: 0, pH: plain(5.8) },
    { at: 600 * MINUTE, pH: plain(5.2) },
  ];

  test('are shown until the pH is down, with the reading that shows it', () => {
    const explained = explain(limit, { temperatures: curve([0, 80], [120, 82], [600, 82]), acid });
    expect(worked(explained)[1]).toBe(`figure-at 5.8 pH 0', figure-at 5.2 pH 600' → 600'`);
    expect(worked(explained)[2]).toBe(`readings-from-to 3 0' 600' → (measured)`);
    expect(rests(explained)).toEqual(['r0: first-of-chamber', 'r600: last-of-chamber', '5.2 pH: shows-ph-down']);
  });

  test('begin at the recorded start, or at the first reading where that is earlier', () => {
    const begins = (startAt: number) =>
      worked(explain(limit, { temperatures: curve([60, 80], [600, 82]), acid }, { ended: true, startAt }))[0];
    expect([begins(0), begins(90 * MINUTE)]).toEqual([`0' → 0'`, `90' → 60'`]);
  });

  test('with no pH yet say so, of one reading rest on it once and of none on the verdict', () => {
    const explained = explain(limit, { temperatures: curve([0, 80]) });
    expect(worked(explained).slice(0, 2)).toEqual(['no-start-recorded → nothing-is-met', 'none → not-yet']);
    expect(rests(explained)).toEqual(['r0: first-of-chamber']);
    byVerdict(explain(limit, { acid }));
  });

  test('are ruled at their base', () => {
    expect(explainerOf(limit).lines(limit, '°F', 80)).toEqual([
      { value: 60, label: { code: 'counted-over-figure', figures: { figure: { value: '60', unit: '°F' } } } },
    ]);
  });
});

describe('a loss of weight', () => {
  const limit = { kind: 'weightLoss' as const, percent: 35, source };
  const weighed = (at: number, value: number, probe = '') => ({
    at,
    mass: massOf({ value, unit: 'g' }),
    id: `w${at}`,
    probe,
  });

  test('is the start less what it weighs now, of the piece that governs', () => {
    const weights = [weighed(0, 1000, 'a'), weighed(1, 600, 'a'), weighed(0, 900, 'b'), weighed(1, 650, 'b')];
    const explained = explain(limit, { weights });
    expect(worked(explained)[0]).toBe('(900 g − 650 g) ÷ 900 g → (measured)');
    expect(worked(explained)[1]).toBe('(measured) → (margin and because)');
    expect(explained.restsOn).toEqual([
      { id: 'w0', at: 0, probe: 'b', is: { value: '900', unit: 'g' }, role: { code: 'weighed-at-start' } },
      { id: 'w1', at: 1, probe: 'b', is: { value: '650', unit: 'g' }, role: { code: 'weighed-now' } },
    ]);
  });

  test('of one weighing, and of none, is as its verdict', () => {
    byVerdict(explain(limit, { weights: [weighed(0, 1000)] }));
    byVerdict(explain(limit, {}));
    expect(explain(limit, { weights: [weighed(0, 100), weighed(1, 60)] }).restsOn[0]?.probe).toBeUndefined();
  });
});

describe('freezing', () => {
  const limit: FreezingLimit = { kind: 'freezing', read: { what: 'centre' }, longestGapSeconds: 7200, source };

  test('is shown by its rows and the readings it went through', () => {
    const explained = explain(limit, { temperatures: curve([0, 0], [60, -10]) });
    expect(worked(explained)[0]).toBe(`readings-from-to 2 0' 60' → (measured)`);
    expect(rests(explained)).toEqual(['r0: the-first', 'r60: the-last']);
    expect(rests(explain(limit, { temperatures: curve([0, 0]) }))).toEqual(['r0: the-first']);
    byVerdict(explain(limit, { temperatures: [{ at: 0, temperature: { hundredths: NaN, unit: '°F' } }] }));
    byVerdict(explain(limit, { temperatures: [] }));
  });

  test('counts as it is judged: nothing of the air before the meat was in, and of several probes the worst', () => {
    const air: FreezingLimit = { ...limit, read: { what: 'freezer', thickness: { value: 5, unit: 'in' } } };
    const readings = curve([0, 40], [600, -5], [660, -5], [720, -5]);
    const explained = explain(air, { temperatures: readings }, { ended: false, startAt: 600 * MINUTE });
    expect(worked(explained)[0]).toBe(`readings-from-to 3 600' 720' → (measured)`);
    expect(rests(explained)).toEqual(['r600: the-first', 'r720: the-last']);
    const probed = (probe: string, ...points: Parameters<typeof curve>) => curve(...points).map((one) => ({ ...one, probe }));
    const two = [...probed('A', [0, -31], [60, -31], [120, -31]), ...probed('B', [30, -31], [60, -31])];
    expect(worked(explain(limit, { temperatures: two }))[0]).toBe(`readings-from-to 2 30' 60' → (measured)`);
    expect(worked(explain(limit, { temperatures: two.toReversed() }))[0]).toBe(`readings-from-to 2 30' 60' → (measured)`);
    const broken = { at: 0, probe: 'C', temperature: { hundredths: NaN, unit: '°F' as const } };
    for (const temperatures of [
      [...two, broken],
      [broken, ...two],
    ])
      byVerdict(explain(limit, { temperatures }, { ended: false }));
    byVerdict(explain(limit, { temperatures: two }, { ended: true, instrumentError: { hundredths: NaN, unit: '°F' } }));
  });
});

describe('a figure', () => {
  const limit: FigureLimit = { kind: 'figure', of: 'Moisture to protein', unit: 'ratio', max: 1900, source };
  const read = (value: number) => ({ value, unit: 'ratio' });

  test('is shown against its bound; the worst of several governs', () => {
    const { steps, restsOn, assumptions } = explainFigure(limit, [
      { id: 'a', at: 1, probe: 'core', read: read(1.8) },
      { id: 'b', at: 2, probe: '', read: read(2) },
    ]);
    expect(steps[0]).toMatchObject({ putIn: { verdict: 'measured' }, of: { kind: 'missed' } });
    expect(restsOn.map(({ id, probe, role }) => [id, probe, plainPart(role)])).toEqual([
      ['a', 'core', 'judged-met'],
      ['b', undefined, 'governs'],
    ]);
    expect(assumptions).toEqual([{ code: 'each-figure-by-itself' }]);
  });

  test('alone assumes nothing, in another unit decides nothing, and none is nothing', () => {
    expect(explainFigure(limit, [{ read: { value: 2, unit: '%' } }])).toMatchObject({
      steps: [{ of: { kind: judgeFigureRead(undefined, limit).kind } }],
      assumptions: [],
    });
    expect(explainFigure(limit, [])).toEqual({ steps: [], restsOn: [], assumptions: [] });
  });
});
