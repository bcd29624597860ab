import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { chillingAt } from '../kinds/cooling/chilling-at.test-data';
import { judgeCurve } from '../limits/judge-curve';
import type { CurveContext } from '../limits/curve-context';
import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { CriticalLimit, CurveLimit } from '../limits/limit';
import { boundOf } from '../quantity/bound';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import { measureHolds } from '../thermal/measure-holds.test-data';
import { explainerOf } from '../kinds/explainers';
import { explainLimit } from './explain-limit';
import { lengthOf, longestStretch } from '../kinds/dwell/longest-stretch';
import { plainPart } from '../limits/plain-part.test-data';

const MINUTE = 60_000;
type Point = [minutes: number, fahrenheit: number];
const curve = (...points: Point[]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F'), id: `r${minutes}` }));
const explain = (readings: CurveReading[], limit: CurveLimit, context: CurveContext = { ended: true }) =>
  explainLimit(limit, judgeCurve(readings, limit, context), { alone: [], series: seriesWith(readings), context });
const seriesWith = (temperatures: CurveReading[]) => ({ temperatures, acid: [], weights: [] });
type Explained = ReturnType<typeof explain>;
const worked = ({ steps }: Explained) => steps.map(({ putIn, gives }) => `${plainPart(putIn)} → ${plainPart(gives)}`);
const rests = ({ restsOn }: Explained) => restsOn.map(({ id, role }) => `${id}: ${plainPart(role)}`);
const remarks = ({ assumptions }: Explained) => assumptions.map((one) => plainPart(one));

describe('a hold', () => {
  const cook: Point[] = [
    [0, 140],
    [10, 146],
    [14, 147],
    [20, 146],
    [25, 120],
  ];

  test('is shown by the row that governs, with the readings at its ends', () => {
    const explained = explain(curve(...cook), cookedMeat65Log);
    expect(worked(explained).slice(1)).toEqual([`20' − 10' → 10 min`, '10 min − 2 min 49 s → (margin and because)']);
    expect(worked(explained)[0]).toBe('(limit) → row-for 146 °F 2 min 49 s');
    expect(rests(explained)).toEqual([
      'r0: one-before 146 °F',
      'r10: first-at-or-above 146 °F',
      'r20: last-held-at-or-above 146 °F',
      'r25: one-after 146 °F',
    ]);
    expect(remarks(explained)[0]).toBe('colder-and-both-at-row');
    expect(explained.sources).toEqual([cookedMeat65Log.source]);
  });

  test('that is too short names the row that lacks least, as the verdict does', () => {
    const explained = explain(curve([0, 100], [10, 145], [12, 145], [15, 120]), cookedMeat65Log);
    expect(explained.verdict.kind).toBe('missed');
    expect(worked(explained).at(-1)).toContain('(margin and because)');
    expect(explained.verdict.figures).toMatchObject({ held: { value: '120000', unit: 'ms' }, at: { value: '145', unit: '°F' } });
    expect(worked(explained)[1]).toBe(`12' − 10' → 2 min`);
  });

  test('of one reading rests on that reading once', () => {
    expect(rests(explain(curve([0, 100], [10, 145]), cookedMeat65Log))).toEqual(['r0: one-before 145 °F', 'r10: first-at-or-above 145 °F']);
  });

  test('that is still going on is the one at the end, not a longer one before it', () => {
    const readings = curve([0, 131], [10, 131], [14, 120], [18, 131], [20, 131]);
    const explained = explain(readings, cookedMeat65Log, { ended: false, now: 20 * MINUTE });
    expect(worked(explained)[1]).toBe(`20' − 18' → 2 min`);
  });

  test('across a gap is shown as long as it would be, and why it does not count', () => {
    const explained = explain(curve([0, 146], [60, 146]), cookedMeat65Log);
    expect(explained.verdict.kind).toBe('undetermined');
    expect(worked(explained)[1]).toBe(`60' − 0' → 1 h`);
    expect(remarks(explained)).toContain('longer-step-counts-nothing 15 min');
  });

  test('that never came about rests on the hottest reading', () => {
    const explained = explain(curve([0, 100], [10, 120], [20, 110]), cookedMeat65Log);
    expect(rests(explained)).toEqual(['r10: the-hottest']);
    expect(worked(explained)[1]).toBe(' → (because)');
  });

  test('a hold that is found has the length the judge counts', () => {
    const readings = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 125, max: 135 })), { minLength: 1 })
      .map((steps) => {
        let minutes = 0;
        return curve(...steps.map(([after, value]): Point => [(minutes += after), value]));
      });
    const bound = boundOf({ '°F': 13000 });
    fc.assert(
      fc.property(readings, (own) => {
        const stretch = longestStretch(own, bound, 15 * MINUTE);
        const [held] = measureHolds(own, [bound], 15 * MINUTE).longest;
        expect(stretch ? lengthOf(own, stretch) : -1).toBe(held);
      }),
    );
  });
});

describe('a come-up', () => {
  test('adds up every step that may have been inside, and shows where straight lines cross', () => {
    const explained = explain(curve([0, 40], [30, 60], [100, 110], [130, 135], [140, 146]), comeUpWithinSixHours);
    expect(worked(explained)).toEqual([
      `130' − 0' → 2 h 10 min`,
      `figure-at 50 °F 15', figure-at 130 °F 124' → 1 h 49 min`,
      '6 h − 2 h 10 min → (margin and because)',
    ]);
    expect(rests(explained)).toEqual(['r0: begins-first-inside 50 °F', 'r130: ends-last-inside 130 °F']);
  });

  test('that fell back counts its steps, not the time between the first and the last', () => {
    const back = curve([0, 40], [30, 60], [60, 135], [90, 140], [120, 120], [150, 140]);
    expect(worked(explain(back, comeUpWithinSixHours))[0]).toBe(`steps-from-to 4 0' 150' → 2 h`);
  });

  test('counts as it is judged: no time after its end on the way down, and the time before its first reading', () => {
    const fell = { ended: true, instrumentError: degrees(1.8, '°F') };
    const down = explain(curve([0, 40], [60, 90], [120, 132], [180, 129]), comeUpWithinSixHours, fell);
    expect(worked(down)[0]).toBe(`120' − 0' → 2 h`);
    const led = explain(curve([60, 90], [120, 132]), comeUpWithinSixHours, { ended: true, startAt: 0 });
    expect(worked(led)).toContain('6 h − 2 h → (margin and because)');
    expect(worked(led)[0]).toBe(`120' − 0' → 2 h`);
    const one = explain(curve([60, 90]), comeUpWithinSixHours, { ended: false, startAt: 0 });
    expect(worked(one)[0]).toBe(`60' − 0' → 1 h`);
    const twice = explain(curve([0, 40], [60, 131], [60, 90], [120, 140]), comeUpWithinSixHours);
    expect(worked(twice)[0]).toBe(`120' − 0' → 2 h`);
    const unknown = { ended: true, instrumentError: { hundredths: NaN, unit: '°F' as const } };
    expect(worked(explain(curve([0, 40], [60, 131]), comeUpWithinSixHours, unknown))).toEqual(['(measured) → (because)']);
  });

  test('is drawn as it is judged, with what is left of its time', () => {
    const drawn = (readings: CurveReading[], context: CurveContext) => {
      const verdict = judgeCurve(readings, comeUpWithinSixHours, context);
      const stretches = explainerOf(comeUpWithinSixHours).stretches(comeUpWithinSixHours, { verdict, readings, unit: '°F', context });
      return stretches.map(({ startAt, endAt, deadline = NaN }) => [startAt, endAt, deadline].map((at) => at && at / MINUTE));
    };
    const fell = { ended: true, instrumentError: degrees(1.8, '°F') };
    expect(drawn(curve([0, 40], [60, 90], [120, 132], [180, 129]), fell)).toEqual([[0, 120, 360]]);
    const back = curve([0, 40], [30, 60], [60, 135], [90, 140], [120, 120], [150, 125]);
    expect(drawn(back, { ended: false })).toEqual([[0, undefined, 390]]);
    expect(drawn(curve([0, 30], [10, 35]), { ended: false })).toEqual([]);
    expect(drawn([], { ended: false })).toEqual([]);
  });

  test('against a limit that contradicts itself has no time to spare', () => {
    const { from, to } = comeUpWithinSixHours;
    const [step] = worked(explain(curve([0, 40], [30, 60]), { ...comeUpWithinSixHours, from: to, to: from })).slice(-1);
    expect(step).toBe('(measured) → (margin and because)');
  });

  test('that has not begun has nothing to count', () => {
    const explained = explain(curve([0, 30], [10, 35]), comeUpWithinSixHours, { ended: false });
    expect(explained.restsOn).toEqual([]);
    expect(worked(explained)).toHaveLength(1);
  });
});

describe('a chill', () => {
  const chill: Point[] = [
    [0, 140],
    [20, 120],
    [80, 79],
    [300, 45],
    [340, 39],
  ];

  test('is shown stage by stage, by its bracket and by straight lines', () => {
    const explained = explain(curve(...chill), coolingUncured);
    expect(worked(explained)).toEqual([
      `80' − 0' → took-of 1 h 20 min 1 h 30 min stage-is-in-time`,
      `0' + (130 °F − 140 °F) × 20 min ÷ (120 °F − 140 °F) → about-straight 10'`,
      `20' + (80 °F − 120 °F) × 1 h ÷ (79 °F − 120 °F) → about-straight 79'`,
      `79' − 10' → about-time 1 h 9 min`,
      `340' − 20' → took-of 5 h 20 min 5 h stage-is-not-shown`,
      `300' + (40 °F − 45 °F) × 40 min ÷ (39 °F − 45 °F) → about-straight 333'`,
      `333' − 79' → about-time 4 h 15 min`,
      '(measured) → (margin and because)',
    ]);
    expect(rests(explained).slice(0, 4)).toEqual([
      'r0: last-at-or-above 130 °F',
      'r20: first-below 130 °F',
      'r20: last-above 80 °F',
      'r80: first-that-stays 80 °F',
    ]);
    expect(remarks(explained).join()).not.toContain('cooling-straight');
  });

  test('that runs shows the time left and what would still bring it there', () => {
    const context = { ended: false, now: 130 * MINUTE, chiller: degrees(35, '°F') };
    const explained = explain(curve([0, 140], [20, 120], [80, 79], [120, 70]), coolingUncured, context);
    expect(worked(explained)).toContain(`20' + 5 h − 130' → time-left 3 h 10 min`);
    expect(worked(explained)).toContain(`towards-chiller.figures 120 °F 20' 79 °F 80' 35 °F → about-as-cools 78'`);
    expect(explained.rescue).toMatchObject([{ code: 'rescue-by-half-way' }]);
    expect(explained.assumptions).not.toContain(explained.rescue[0]);
  });

  test('that is over its time says by how much, from the last reading where nobody tells the present', () => {
    const explained = explain(curve([0, 140], [20, 120], [200, 100]), coolingUncured, { ended: false });
    expect(worked(explained)[0]).toBe(`0' + 1 h 30 min − 200' → over-by 1 h 50 min`);
  });

  test('that has not begun says so', () => {
    const explained = explain(curve([0, 140]), coolingUncured, { ended: false });
    expect(worked(explained)[0]).toBe('no-reading-below 130 °F → stage-is-not-begun');
    expect(explained.restsOn).toEqual([]);
  });

  test('already below the bound at its first reading counts from the end of cooking', () => {
    const explained = explain(curve([10, 120], [60, 79], [300, 39]), coolingUncured, { ended: true, startAt: 0 });
    expect(worked(explained)[0]).toBe(`60' − 0' → took-of 1 h 1 h 30 min stage-is-in-time`);
    expect(rests(explained)[0]).toBe('r10: first-below 130 °F');
  });

  test('at its lower bound from its first reading on rests on that reading twice, and never on one above', () => {
    const explained = explain(curve([10, 79], [60, 39]), coolingUncured, { ended: true, startAt: 10 * MINUTE });
    expect(rests(explained).slice(0, 2)).toEqual(['r10: first-below 130 °F', 'r10: first-that-stays 80 °F']);
  });

  const within = { ...coolingUncured, startWithinSeconds: 3600 };
  test('that had to begin in time shows from what to what', () => {
    const context = { ended: true, startAt: 0, chillingBegan: chillingAt(25 * MINUTE) };
    expect(worked(explain(curve(...chill), within, context))[0]).toBe(`25' − 0' → chilling-after-cooking 25 min`);
    const by = (...minutes: number[]) => {
      const chillingBegan = chillingAt(...minutes.map((minute) => minute * MINUTE));
      return worked(explain(curve(...chill), within, { ended: true, startAt: 0, chillingBegan }))[0];
    };
    expect(by(25, 40, 30)).toBe(`40' − 0' → chilling-after-cooking 40 min 3`);
    expect(by(-5)).toBe(`-5' − 0' → chilling-before-cooking-ended 5 min`);
    expect(by()).toContain('no-chilling-recorded');
    expect(worked(explain(curve(...chill), within))[0]).toBe('end-of-cooking-not-recorded → not-known');
    expect(worked(explain(curve(...chill), within, { ended: true, startAt: 0 }))[0]).toBe(`no-chilling-recorded 0' → shown-by-a-cold-core`);
  });
});

describe('a chill counted from the end of cooking', () => {
  const fromCooking: CoolingLimit = {
    ...coolingUncured,
    stages: [{ to: { '°F': 5000 }, withinSeconds: 90 * 60, counted: 'end of cooking' }],
  };
  const readings = curve([10, 120], [60, 60], [80, 45]);

  test('has one crossing, at its foot', () => {
    const explained = explain(readings, fromCooking, { ended: true, startAt: 0 });
    expect(worked(explained).slice(0, 2)).toEqual([
      `80' − 0' → took-of 1 h 20 min 1 h 30 min stage-is-in-time`,
      `60' + (50 °F − 60 °F) × 20 min ÷ (45 °F − 60 °F) → about-straight 73'`,
    ]);
    expect(rests(explained)).toEqual(['r60: last-above 50 °F', 'r80: first-that-stays 50 °F']);
  });

  test('is not timed while nobody recorded when cooking ended', () => {
    expect(worked(explain(readings, fromCooking))[0]).toMatch(/→ not-timed$/);
  });
});

test('of several probes the one that governs is explained', () => {
  const probe = (name: string, ...points: Point[]) => curve(...points).map((one) => ({ ...one, probe: name }));
  const readings = [...curve([0, 140], [60, 79]), ...probe('rack', [1, 140], [61, 110], [200, 100])];
  expect(rests(explain(readings, coolingUncured))[0]).toBe('r1: last-at-or-above 130 °F');
});

const each = [cookedMeat65Log, comeUpWithinSixHours, coolingUncured];

test.each(each)('without a reading $kind is as its verdict', (limit) => {
  expect(worked(explain([], limit))).toEqual(['(measured) → (because)']);
});

test('an answer on humidity, which is judged with its cook, is explained by its verdict', () => {
  const limit: CriticalLimit = { kind: 'attestation', statement: 'Humidity was kept.', asks: 'humidity', source: coolingUncured.source };
  const verdict = judgeCurve([], coolingUncured, { ended: true });
  const explained = explainLimit(limit, verdict, { alone: [], series: seriesWith([]), context: { ended: true } });
  expect(worked(explained)).toEqual(['(measured) → (because)']);
});

test('with an error of the thermometer that is no figure the verdict speaks', () => {
  const context = { ended: true, instrumentError: { hundredths: NaN, unit: '°F' as const } };
  expect(worked(explain(curve([0, 146]), cookedMeat65Log, context))).toEqual(['(measured) → (because)']);
});
