import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { coolingFromCooking, coolingUncured } from '../../limit-sets/fsis-stabilization';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import { chillingAt } from './chilling-at.test-data';
import type { CurveContext } from '../../limits/curve-context';
import { judgeCooling } from './judge-cooling';
import type { CoolingLimit } from './cooling-limit';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}, limit: CoolingLimit = coolingUncured) =>
  judgeCooling(readings, limit, { ended: true, ...context });

test.each([
  ['on every bound at its last minute', curve('°F', [0, 130], [90, 80], [390, 40]), 'met', '0 s to spare'],
  ['a minute late for 80 °F', curve('°F', [0, 130], [91, 80], [390, 40]), 'missed', '1 min too long'],
  ['a minute late for 40 °F', curve('°F', [0, 130], [90, 80], [391, 40]), 'missed', '1 min too long'],
  ['on every printed bound in °C', curve('°C', [0, 54.4], [90, 26.7], [390, 4.4]), 'met', '0 s to spare'],
  ['a minute late in °C', curve('°C', [0, 54.4], [91, 26.7], [390, 4.4]), 'missed', '1 min too long'],
])('a chill %s', (_case, readings, kind, margin) => {
  expect(judge(readings)).toMatchObject({ kind, margin });
});

test('readings around the bounds are charged whole: not shown is not met', () => {
  const verdict = judge(curve('°F', [0, 141], [80, 82], [95, 79], [380, 39]));
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    margin: undefined,
    because: 'The readings do not show that 130 → 80 °F took no longer than 1 h 30 min.',
    next: 'Add the readings in between from the logger, or hold the lot.',
  });
  expect(verdict.notes).toEqual([
    'By straight lines between the readings: 130 → 80 °F in about 1 h 15 min.',
    'By straight lines between the readings: 80 → 40 °F in about 4 h 43 min.',
  ]);
});

test('too long by straight lines is missed', () => {
  expect(judge(curve('°F', [0, 131], [60, 100], [110, 79], [300, 39]))).toMatchObject({
    kind: 'missed',
    because: '130 → 80 °F took 1 h 50 min; 1 h 30 min are allowed.',
  });
});

test('a met chill names the tightest stage', () => {
  const verdict = judge(curve('°F', [0, 130], [70, 80], [360, 40]));
  expect(verdict).toMatchObject({
    kind: 'met',
    measured: '130 → 80 °F in 1 h 10 min, 80 → 40 °F in 4 h 50 min',
    margin: '10 min to spare',
    because: '80 → 40 °F took at most 4 h 50 min; 5 h are allowed.',
    notes: [],
  });
});

test('a bounce above the bound counts to the later crossing', () => {
  expect(judge(curve('°F', [0, 130], [60, 80], [75, 84], [100, 78], [300, 40])).kind).toBe('missed');
  expect(judge(curve('°F', [0, 130], [60, 80], [75, 84], [90, 80], [300, 40])).kind).toBe('met');
});

test('a core that rises above 130 °F again still counts from its first fall', () => {
  expect(judge(curve('°F', [0, 140], [60, 90], [100, 141], [120, 79], [300, 40])).kind).toBe('missed');
});

test('heating before the chill is not part of it', () => {
  const readings = curve('°F', [-200, 38], [-60, 128], [-30, 150], [0, 131], [10, 129], [80, 80], [300, 40]);
  expect(judge(readings)).toMatchObject({
    kind: 'met',
    measured: expect.stringContaining('130 → 80 °F in 1 h 20 min') as string,
  });
});

test('a first reading already below the bound leaves the start unknown', () => {
  const readings = curve('°F', [0, 120], [60, 80], [300, 40]);
  expect(judge(readings)).toMatchObject({
    kind: 'undetermined',
    because: 'The first reading is already below 130 °F, so the start of 130 → 80 °F is not known.',
    next: 'Add an earlier reading, or the time cooking ended.',
  });
  expect(judge(readings, { startAt: -30 * MINUTE })).toMatchObject({ kind: 'met', margin: '0 s to spare' });
  expect(judge(readings, { startAt: -31 * MINUTE }).kind).toBe('missed');
  expect(judge(curve('°F', [0, 120], [91, 80], [300, 40])).kind).toBe('missed');
});

test('readings of the cook do not move the start before the recorded end of cooking, while the core still warmed', () => {
  const chill: [number, number][] = [
    [10, 125],
    [85, 80],
    [300, 40],
  ];
  const cooled = curve('°F', [-20, 150], ...chill);
  expect(judge(cooled).kind).toBe('undetermined');
  expect(judge(cooled, { startAt: 0 }).kind).toBe('undetermined');
  const warmed = curve('°F', [-60, 38], [-20, 120], ...chill);
  expect(judge(warmed, { startAt: 0 })).toMatchObject({ kind: 'met', margin: '5 min to spare' });
});

test('a reading below the bound before the recorded end of cooking is believed over the record', () => {
  const readings = curve('°F', [0, 130], [1, 120], [91, 80], [300, 40]);
  expect(judge(readings, { startAt: 2 * MINUTE }).kind).toBe('missed');
});

test('while a stage runs it says what to reach and by when', () => {
  const readings = curve('°F', [0, 130], [40, 105]);
  expect(judge(readings, { ended: false, now: 65 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    measured: '130 → 80 °F: 105 °F after 40 min, 80 → 40 °F not begun',
    margin: '50 min left at the last reading',
    next: 'Chill on: reach 80 °F within the next 25 min.',
    running: { stage: '130 → 80 °F', bound: '80 °F', since: 0, deadline: 90 * MINUTE },
  });
  expect(judge(readings, { ended: false }).next).toBe('Chill on: reach 80 °F within 50 min of the last reading.');
});

test('the clock alone only warns; a reading after the deadline decides', () => {
  const readings = curve('°F', [0, 130], [80, 85]);
  expect(judge(readings, { ended: false, now: 91 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    because: '1 h 30 min are over and no reading shows 80 °F.',
    next: 'Read the core temperature now.',
  });
  expect(judge(curve('°F', [0, 130], [80, 85], [92, 81]), { ended: false })).toMatchObject({
    kind: 'missed',
    because: '130 → 80 °F is not done: 81 °F after 1 h 32 min; 1 h 30 min are allowed.',
  });
  expect(judge(curve('°F', [0, 130], [80, 85], [92, 79]), { ended: false }).kind).toBe('undetermined');
});

test('the second stage runs after the first was met', () => {
  const verdict = judge(curve('°F', [0, 130], [80, 80], [200, 55]), { ended: false, now: 320 * MINUTE });
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    next: 'Chill on: reach 40 °F within the next 1 h.',
    running: { stage: '80 → 40 °F', deadline: 380 * MINUTE, since: 80 * MINUTE },
  });
});

test('a missed first stage stays missed while the second still runs', () => {
  const verdict = judge(curve('°F', [0, 130], [100, 80], [200, 55]), { ended: false, now: 300 * MINUTE });
  expect(verdict).toMatchObject({ kind: 'missed', running: { stage: '80 → 40 °F' } });
});

test('a hot product has not begun to chill', () => {
  expect(judge(curve('°F', [0, 155]), { ended: false })).toMatchObject({
    kind: 'undetermined',
    measured: '130 → 80 °F not begun, 80 → 40 °F not begun',
  });
});

test('a chill ended above its bound is missed', () => {
  expect(judge(curve('°F', [0, 130], [80, 80], [200, 45]))).toMatchObject({
    kind: 'missed',
    because: 'Chilling was ended before 40 °F was reached: the last reading is 45 °F.',
  });
});

test('a gap longer than tolerated leaves doubt, unless the time is surely over', () => {
  const strict = { ...coolingUncured, longestGapSeconds: 3600 };
  expect(judge(curve('°F', [0, 130], [61, 80], [120, 60], [180, 40]), {}, strict)).toMatchObject({
    kind: 'undetermined',
    because: 'There is no reading for 1 h 1 min; at most 1 h may lie between two readings.',
  });
  expect(judge(curve('°F', [0, 130], [60, 80], [120, 60], [180, 40]), {}, strict).kind).toBe('met');
  expect(judge(curve('°F', [0, 131], [70, 129], [165, 81], [170, 80], [220, 40]), {}, strict).kind).toBe('missed');
});

describe('of several stages that are missed', () => {
  test('the largest overrun is stated, and every one of them', () => {
    const both = curve('°F', [0, 130], [105, 80], [300, 60], [585, 40]);
    expect(judge(both)).toMatchObject({
      kind: 'missed',
      margin: '3 h too long',
      because: '130 → 80 °F took 1 h 45 min; 1 h 30 min are allowed. 80 → 40 °F took 8 h; 5 h are allowed.',
      measured: '130 → 80 °F in 1 h 45 min, 80 → 40 °F in 8 h',
    });
    expect(judge(curve('°F', [0, 130], [390, 80], [600, 60], [750, 40])).margin).toBe('5 h too long');
  });

  test('it grows with the readings of the one that goes on', () => {
    const margins = [105, 200, 270].map((minute) => judge(curve('°F', [0, 130], [minute, 85]), { ended: false }).margin);
    expect(margins).toEqual(['15 min too long', '1 h 50 min too long', '3 h too long']);
    expect(judge(curve('°F', [0, 130], [105, 80], [465, 42]), { ended: false })).toMatchObject({
      margin: '1 h too long',
      because: '130 → 80 °F took 1 h 45 min; 1 h 30 min are allowed. 80 → 40 °F is not done: 42 °F after 6 h; 5 h are allowed.',
      next: 'Chill on without a break. Hold the lot and follow the corrective action of the plan.',
    });
  });

  test('while it goes on it is said to be cooling still, and no longer once it is over or ended', () => {
    const going = curve('°F', [0, 130], [105, 80], [200, 60]);
    expect(judge(going, { ended: false }).still).toBe('cooling');
    expect(judge(curve('°F', [0, 130], [105, 85]), { ended: false }).still).toBe('cooling');
    expect(judge(going).still).toBeUndefined();
    expect(judge(curve('°F', [0, 130], [105, 80], [300, 40]), { ended: false }).still).toBeUndefined();
    expect(judge(curve('°F', [0, 130], [60, 85]), { ended: false }).still).toBeUndefined();
  });

  test('one that never began says so beside the one that is over', () => {
    expect(judge(curve('°F', [0, 130], [105, 85]))).toMatchObject({
      margin: '15 min too long',
      because: expect.stringContaining('Chilling was ended before 40 °F was reached') as string,
    });
  });

  test('a late start of chilling is one of them', () => {
    const late = judge(
      curve('°F', [10, 150], [200, 119], [400, 80], [600, 55]),
      { startAt: 0, chillingBegan: chillingAt(190 * MINUTE) },
      coolingFromCooking,
    );
    expect(late).toMatchObject({ kind: 'missed', margin: '3 h 50 min too long' });
    expect(late.because).toBe(
      'Chilling began 3 h 10 min after cooking; 1 h 30 min are allowed. 120 → 55 °F took 9 h 50 min; 6 h are allowed.',
    );
  });
});

test('a stage in all runs from where the first begins, and is missed before its own figure is reached', () => {
  const standing = (...minutes: number[]) =>
    judge(curve('°F', [0, 135], ...minutes.map((minute): [number, number] => [minute, 100])), { ended: false }, coolingFoodCode);
  expect(standing(60).measured).toBe('135 → 70 °F: 100 °F after 1 h, 135 → 41 °F: 100 °F after 1 h');
  expect(standing(60, 240, 420)).toMatchObject({
    margin: '5 h too long',
    because: '135 → 70 °F is not done: 100 °F after 7 h; 2 h are allowed. ' + '135 → 41 °F is not done: 100 °F after 7 h; 6 h are allowed.',
  });
});

test('a stage in all is named by where its clock starts', () => {
  expect(judge(curve('°F', [0, 135], [90, 70], [361, 41]), {}, coolingFoodCode)).toMatchObject({
    measured: '135 → 70 °F in 1 h 30 min, 135 → 41 °F in 6 h 1 min in all',
    because: '135 → 41 °F took 6 h 1 min; 6 h are allowed.',
    limit: '135 → 70 °F within 2 h, and 135 → 41 °F within 6 h in all',
  });
});

test.each([
  ['at 41 °F after exactly 6 h in all', curve('°F', [0, 135], [120, 70], [360, 41]), 'met'],
  ['at 41 °F a minute later, though 70 °F came early', curve('°F', [0, 135], [90, 70], [361, 41]), 'missed'],
  ['in °C at the last minute', curve('°C', [0, 57], [120, 21], [360, 5]), 'met'],
])('retail cooling %s', (_case, readings, kind) => {
  expect(judge(readings, {}, coolingFoodCode).kind).toBe(kind);
});

test.each([
  ['when cooking ended is not known', {}, 'undetermined'],
  ['chilling began in time', { startAt: 0, chillingBegan: chillingAt(30 * MINUTE) }, 'met'],
  [
    'the core was down before chilling is said to have begun, in time all the same',
    { startAt: 0, chillingBegan: chillingAt(31 * MINUTE) },
    'met',
  ],
  ['chilling began a minute late', { startAt: 0, chillingBegan: chillingAt(91 * MINUTE) }, 'missed'],
  ['chilling is said to have begun before cooking ended', { startAt: 0, chillingBegan: chillingAt(-1) }, 'undetermined'],
  ['the core is below 120 °F in time', { startAt: 0 }, 'met'],
  ['the core is below 120 °F later and nobody wrote down the start', { startAt: -61 * MINUTE }, 'undetermined'],
])('a limit on the start of chilling: %s', (_case, context, kind) => {
  const readings = curve('°F', [10, 150], [20, 120], [30, 110], [360, 55]);
  expect(judge(readings, context, coolingFromCooking).kind).toBe(kind);
});

test('a reading that may just be above by the error of the thermometer hides no start of chilling', () => {
  const context = { startAt: 0, instrumentError: { hundredths: 100, unit: '°F' as const } };
  const chill = curve('°F', [10, 150], [20, 130], [30, 119.5], [40, 110], [300, 54]);
  expect(judge(chill, context, coolingFromCooking).kind).toBe('met');
  expect(judge(chill.slice(0, 3), { ...context, ended: false }, coolingFromCooking).because).toContain('Nothing shows that chilling began');
  const late = curve('°F', [10, 150], [20, 130], [89, 119.5], [91, 110], [300, 54]);
  expect(judge(late, context, coolingFromCooking).kind).toBe('undetermined');
  // Warm again after that, it counts from its last fall.
  const again = curve('°F', [10, 150], [20, 130], [30, 118], [40, 125], [100, 118], [300, 54]);
  expect(judge(again, context, coolingFromCooking).kind).toBe('met');
});

test.each([
  ['no readings', []],
  ['only what cannot be', curve('°C', [0, 301], [5, -60])],
  ['no numbers', [{ at: 0, temperature: { hundredths: NaN, unit: '°F' as const } }]],
])('%s is undetermined, ended or not', (_case, readings) => {
  expect(judge(readings)).toMatchObject({ kind: 'undetermined', measured: 'nothing usable' });
  expect(judge(readings, { ended: false }).kind).toBe('undetermined');
});

test('one cold reading alone never meets a cooling limit', () => {
  expect(judge(curve('°F', [0, 38])).kind).toBe('undetermined');
  expect(judge(curve('°F', [0, 38]), {}, { ...coolingUncured, stages: [] }).kind).toBe('undetermined');
});

test('a stage that does not end colder than it begins decides nothing', () => {
  const stages = [{ from: { '°F': 8000 }, to: { '°F': 13000 }, withinSeconds: 5400, counted: 'stage' as const }];
  expect(judge(curve('°F', [0, 130], [60, 79]), {}, { ...coolingUncured, stages }).kind).toBe('undetermined');
});

test('a start unknown but a bound reached is not running any more', () => {
  expect(judge(curve('°F', [0, 120], [60, 80], [300, 40])).running).toBeUndefined();
});

test('of two values of one instant the worse counts at either end', () => {
  const bounds = curve('°F', [-10, 132], [0, 130], [0, 129], [90, 80], [390, 40]);
  expect(judge(bounds).kind).not.toBe('met');
  expect(judge(curve('°F', [0, 130], [90, 80], [90, 81], [100, 70], [390, 40])).kind).not.toBe('met');
});

test('leaving out a reading of a falling or rising stretch, or a longer gap, never turns doubt into met', () => {
  const step = fc.tuple(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 3500, max: 14_500 }));
  fc.assert(
    fc.property(
      fc.array(step, { minLength: 3, maxLength: 10 }),
      fc.boolean(),
      fc.nat(),
      fc.option(fc.integer({ min: -60, max: 0 })),
      fc.boolean(),
      (steps, isSorted, pick, start, ended) => {
        const values = steps.map(([, value]) => value);
        if (isSorted) values.sort((a, b) => b - a);
        let at = 0;
        const readings = steps.map(([gap], i) => ({
          at: (at += gap * MINUTE),
          temperature: { hundredths: values[i] ?? 0, unit: '°F' as const },
        }));
        const context = { ended, startAt: start === null ? undefined : start * MINUTE };
        if (judge(readings, context).kind === 'met') return;
        const index = 1 + (pick % (readings.length - 2));
        const [before = 0, own = 0, after = 0] = values.slice(index - 1, index + 2);
        if (own >= Math.min(before, after) && own <= Math.max(before, after)) {
          expect(
            judge(
              readings.filter((_, i) => i !== index),
              context,
            ).kind,
          ).not.toBe('met');
        }
        const later = readings.map((reading, i) => ({ ...reading, at: reading.at + (i >= index ? 45 * MINUTE : 0) }));
        expect(judge(later, context).kind).not.toBe('met');
      },
    ),
    { numRuns: 2000 },
  );
});
