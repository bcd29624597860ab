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

const hours = (count: number) => ({ value: String(count * 3_600_000), unit: 'ms' });

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}, limit: CoolingLimit = coolingUncured) =>
  judgeCooling(readings, limit, { ended: true, ...context });

test.each([
  ['on every bound at its last minute', curve('°F', [0, 130], [90, 80], [390, 40]), 'met', { spare: hours(0) }],
  ['a minute late for 80 °F', curve('°F', [0, 130], [91, 80], [390, 40]), 'missed', { over: hours(1 / 60) }],
  ['a minute late for 40 °F', curve('°F', [0, 130], [90, 80], [391, 40]), 'missed', { over: hours(1 / 60) }],
  ['on every printed bound in °C', curve('°C', [0, 54.4], [90, 26.7], [390, 4.4]), 'met', { spare: hours(0) }],
  ['a minute late in °C', curve('°C', [0, 54.4], [91, 26.7], [390, 4.4]), 'missed', { over: hours(1 / 60) }],
])('a chill %s', (_case, readings, kind, figures) => {
  const finding = kind === 'met' ? 'cooling-in-time' : 'cooling-too-late';
  expect(judge(readings)).toMatchObject({ kind, finding, figures });
});

test('readings around the bounds are charged whole: not shown is not met', () => {
  const verdict = judge(curve('°F', [0, 141], [80, 82], [95, 79], [380, 39]));
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-not-shown',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '5700000', unit: 'ms' },
    },
  });
  expect(verdict.notes).toEqual([
    {
      code: 'cooling-straight',
      figures: {
        stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
        straight: { value: '4500000', unit: 'ms' },
      },
    },
    {
      code: 'cooling-straight',
      figures: {
        stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
        straight: { value: '16980000', unit: 'ms' },
      },
    },
  ]);
});

test('too long by straight lines is missed', () => {
  expect(judge(curve('°F', [0, 131], [60, 100], [110, 79], [300, 39]))).toMatchObject({
    kind: 'missed',
    finding: 'cooling-too-late',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '6600000', unit: 'ms' },
      over: { value: '1200000', unit: 'ms' },
    },
  });
});

test('a met chill names the tightest stage', () => {
  const verdict = judge(curve('°F', [0, 130], [70, 80], [360, 40]));
  expect(verdict).toMatchObject({
    kind: 'met',
    notes: [],
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '18000000', unit: 'ms' },
      from: { value: '80', unit: '°F' },
      took: { value: '17400000', unit: 'ms' },
      spare: { value: '600000', unit: 'ms' },
    },
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
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '4800000', unit: 'ms' },
      spare: { value: '600000', unit: 'ms' },
    },
  });
});

test('a first reading already below the bound leaves the start unknown', () => {
  const readings = curve('°F', [0, 120], [60, 80], [300, 40]);
  expect(judge(readings)).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-start-unknown',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '3600000', unit: 'ms' },
    },
  });
  expect(judge(readings, { startAt: -30 * MINUTE })).toMatchObject({
    kind: 'met',
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '5400000', unit: 'ms' },
      spare: { value: '0', unit: 'ms' },
    },
  });
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
  expect(judge(warmed, { startAt: 0 })).toMatchObject({
    kind: 'met',
    finding: 'cooling-in-time',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '5100000', unit: 'ms' },
      spare: { value: '300000', unit: 'ms' },
    },
  });
});

test('a reading below the bound before the recorded end of cooking is believed over the record', () => {
  const readings = curve('°F', [0, 130], [1, 120], [91, 80], [300, 40]);
  expect(judge(readings, { startAt: 2 * MINUTE }).kind).toBe('missed');
});

test('while a stage runs it says what to reach and by when', () => {
  const readings = curve('°F', [0, 130], [40, 105]);
  expect(judge(readings, { ended: false, now: 65 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, to: { value: '80', unit: '°F' } },
      deadline: 5400000,
      since: 0,
    },
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '105', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '2400000', unit: 'ms' },
      left: { value: '1500000', unit: 'ms' },
      toGo: { value: '3000000', unit: 'ms' },
    },
  });
  expect(judge(readings, { ended: false })).toMatchObject({
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '105', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '2400000', unit: 'ms' },
      leftThen: { value: '3000000', unit: 'ms' },
      toGo: { value: '3000000', unit: 'ms' },
    },
  });
});

test('the clock alone only warns; a reading after the deadline decides', () => {
  const readings = curve('°F', [0, 130], [80, 85]);
  expect(judge(readings, { ended: false, now: 91 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-overdue',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '85', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '4800000', unit: 'ms' },
      left: { value: '60000', unit: 'ms' },
      toGo: { value: '600000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 130], [80, 85], [92, 81]), { ended: false })).toMatchObject({
    kind: 'missed',
    finding: 'cooling-still-above',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '81', unit: '°F' },
      from: { value: '130', unit: '°F' },
      took: { value: '5520000', unit: 'ms' },
      leftThen: { value: '120000', unit: 'ms' },
      over: { value: '120000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 130], [80, 85], [92, 79]), { ended: false }).kind).toBe('undetermined');
});

test('the second stage runs after the first was met', () => {
  const verdict = judge(curve('°F', [0, 130], [80, 80], [200, 55]), { ended: false, now: 320 * MINUTE });
  expect(verdict).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } }, to: { value: '40', unit: '°F' } },
      deadline: 22800000,
      since: 4800000,
    },
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '18000000', unit: 'ms' },
      reading: { value: '55', unit: '°F' },
      from: { value: '80', unit: '°F' },
      took: { value: '7200000', unit: 'ms' },
      left: { value: '3600000', unit: 'ms' },
      toGo: { value: '10800000', unit: 'ms' },
    },
  });
});

test('a missed first stage stays missed while the second still runs', () => {
  const verdict = judge(curve('°F', [0, 130], [100, 80], [200, 55]), { ended: false, now: 300 * MINUTE });
  expect(verdict).toMatchObject({
    kind: 'missed',
    running: {
      code: 'cooling',
      figures: { stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } }, to: { value: '40', unit: '°F' } },
      deadline: 24000000,
      since: 6000000,
    },
    finding: 'cooling-too-late',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '6000000', unit: 'ms' },
      over: { value: '600000', unit: 'ms' },
    },
  });
});

test('a hot product has not begun to chill', () => {
  expect(judge(curve('°F', [0, 155]), { ended: false })).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-not-begun',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '155', unit: '°F' },
      from: { value: '130', unit: '°F' },
    },
  });
});

test('a chill ended above its bound is missed', () => {
  expect(judge(curve('°F', [0, 130], [80, 80], [200, 45]))).toMatchObject({
    kind: 'missed',
    finding: 'cooling-ended-above',
    figures: {
      stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '18000000', unit: 'ms' },
      reading: { value: '45', unit: '°F' },
      from: { value: '80', unit: '°F' },
      took: { value: '7200000', unit: 'ms' },
      leftThen: { value: '10800000', unit: 'ms' },
    },
  });
});

test('a gap longer than tolerated leaves doubt, unless the time is surely over', () => {
  const strict = { ...coolingUncured, longestGapSeconds: 3600 };
  expect(judge(curve('°F', [0, 130], [61, 80], [120, 60], [180, 40]), {}, strict)).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-gap',
    figures: {
      stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
      to: { value: '80', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      from: { value: '130', unit: '°F' },
      took: { value: '3660000', unit: 'ms' },
      gap: { value: '3660000', unit: 'ms' },
      tolerated: { value: '3600000', unit: 'ms' },
    },
  });
  expect(judge(curve('°F', [0, 130], [60, 80], [120, 60], [180, 40]), {}, strict).kind).toBe('met');
  expect(judge(curve('°F', [0, 131], [70, 129], [165, 81], [170, 80], [220, 40]), {}, strict).kind).toBe('missed');
});

describe('of several stages that are missed', () => {
  test('the largest overrun is stated, and every one of them', () => {
    const both = curve('°F', [0, 130], [105, 80], [300, 60], [585, 40]);
    expect(judge(both)).toMatchObject({
      kind: 'missed',
      finding: 'cooling-too-late',
      figures: { over: hours(3) },
      parts: [
        { kind: 'missed', finding: 'cooling-too-late', measure: 'stage-took', figures: { took: hours(1.75), allowed: hours(1.5) } },
        { kind: 'missed', finding: 'cooling-too-late', measure: 'stage-took', figures: { took: hours(8), allowed: hours(5) } },
      ],
    });
    expect(judge(curve('°F', [0, 130], [390, 80], [600, 60], [750, 40]))).toMatchObject({ figures: { over: hours(5) } });
  });

  test('it grows with the readings of the one that goes on', () => {
    const overruns = [105, 200, 270].map((minute) => judge(curve('°F', [0, 130], [minute, 85]), { ended: false }).figures);
    const minutesOver = (minutes: number) => ({ over: { value: String(minutes * 60_000), unit: 'ms' } });
    expect(overruns).toMatchObject([15, 110, 180].map(minutesOver));
    expect(judge(curve('°F', [0, 130], [105, 80], [465, 42]), { ended: false })).toMatchObject({
      finding: 'cooling-still-above',
      figures: {
        stage: { from: { value: '80', unit: '°F' }, to: { value: '40', unit: '°F' } },
        to: { value: '40', unit: '°F' },
        allowed: { value: '18000000', unit: 'ms' },
        reading: { value: '42', unit: '°F' },
        from: { value: '80', unit: '°F' },
        took: { value: '21600000', unit: 'ms' },
        leftThen: { value: '3600000', unit: 'ms' },
        over: { value: '3600000', unit: 'ms' },
      },
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
      figures: { over: hours(0.25) },
      parts: [{ kind: 'missed' }, { kind: 'missed', finding: 'cooling-ended-above', figures: { to: { value: '40', unit: '°F' } } }],
    });
  });

  test('a late start of chilling is one of them', () => {
    const late = judge(
      curve('°F', [10, 150], [200, 119], [400, 80], [600, 55]),
      { startAt: 0, chillingBegan: chillingAt(190 * MINUTE) },
      coolingFromCooking,
    );
    expect(late).toMatchObject({
      kind: 'missed',
      finding: 'cooling-too-late',
      figures: {
        stage: { from: { value: '120', unit: '°F' }, to: { value: '55', unit: '°F' } },
        to: { value: '55', unit: '°F' },
        allowed: { value: '21600000', unit: 'ms' },
        from: { value: '120', unit: '°F' },
        took: { value: '35400000', unit: 'ms' },
        over: { value: '13800000', unit: 'ms' },
      },
    });
    expect(late).toMatchObject({
      finding: 'cooling-too-late',
      figures: {
        stage: { from: { value: '120', unit: '°F' }, to: { value: '55', unit: '°F' } },
        to: { value: '55', unit: '°F' },
        allowed: { value: '21600000', unit: 'ms' },
        from: { value: '120', unit: '°F' },
        took: { value: '35400000', unit: 'ms' },
        over: { value: '13800000', unit: 'ms' },
      },
    });
  });
});

test('a stage in all runs from where the first begins, and is missed before its own figure is reached', () => {
  const standing = (...minutes: number[]) =>
    judge(curve('°F', [0, 135], ...minutes.map((minute): [number, number] => [minute, 100])), { ended: false }, coolingFoodCode);
  expect(standing(60)).toMatchObject({
    finding: 'cooling-running',
    figures: {
      stage: { from: { value: '135', unit: '°F' }, to: { value: '70', unit: '°F' } },
      to: { value: '70', unit: '°F' },
      allowed: { value: '7200000', unit: 'ms' },
      reading: { value: '100', unit: '°F' },
      from: { value: '135', unit: '°F' },
      took: { value: '3600000', unit: 'ms' },
      leftThen: { value: '3600000', unit: 'ms' },
      toGo: { value: '3600000', unit: 'ms' },
    },
  });
  expect(standing(60, 240, 420)).toMatchObject({
    finding: 'cooling-still-above',
    figures: {
      stage: { from: { value: '135', unit: '°F' }, to: { value: '70', unit: '°F' } },
      to: { value: '70', unit: '°F' },
      allowed: { value: '7200000', unit: 'ms' },
      reading: { value: '100', unit: '°F' },
      from: { value: '135', unit: '°F' },
      took: { value: '25200000', unit: 'ms' },
      leftThen: { value: '18000000', unit: 'ms' },
      over: { value: '18000000', unit: 'ms' },
    },
  });
});

test('a stage in all is named by where its clock starts', () => {
  expect(judge(curve('°F', [0, 135], [90, 70], [361, 41]), {}, coolingFoodCode)).toMatchObject({
    finding: 'cooling-too-late',
    figures: {
      stage: { from: { value: '135', unit: '°F' }, to: { value: '41', unit: '°F' } },
      to: { value: '41', unit: '°F' },
      allowed: { value: '21600000', unit: 'ms' },
      from: { value: '135', unit: '°F' },
      took: { value: '21660000', unit: 'ms' },
      over: { value: '60000', unit: 'ms' },
    },
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
  expect(judge(chill.slice(0, 3), { ...context, ended: false }, coolingFromCooking)).toMatchObject({
    finding: 'chill-start-not-shown',
    figures: { within: { value: '5400000', unit: 'ms' }, from: { value: '120', unit: '°F' } },
  });
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
  expect(judge(readings)).toMatchObject({ kind: 'undetermined', finding: 'no-usable-reading' });
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
