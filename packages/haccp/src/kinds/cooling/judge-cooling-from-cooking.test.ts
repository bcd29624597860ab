import fc from 'fast-check';
import { expect, test } from 'vitest';
import { explainCooling } from './explain-cooling';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import { chillingAt } from './chilling-at.test-data';
import type { CurveContext } from '../../limits/curve-context';
import { judgeCurve } from '../../limits/judge-curve';
import { addReading, beginCurve, judgeSoFar } from '../../limits/judge-curve-so-far';
import type { CoolingLimit } from './cooling-limit';
import { limitFault } from '../../limits/limit-fault';
import { plainPart } from '../../limits/plain-part.test-data';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));

/** Invented figures, printed in both units: to 50 °F (10 °C) within 90 min of the end of cooking. */
const fromCooking: CoolingLimit = {
  ...coolingFoodCode,
  stages: [{ to: { '°F': 5000, '°C': 1000 }, withinSeconds: 90 * 60, counted: 'end of cooking' }],
};
const inAll: CoolingLimit = {
  ...fromCooking,
  stages: [
    ...fromCooking.stages,
    { from: { '°F': 5000, '°C': 1000 }, to: { '°F': 4000, '°C': 440 }, withinSeconds: 180 * 60, counted: 'start' },
  ],
};
const judge = (readings: CurveReading[], context: Partial<CurveContext> = {}, limit = fromCooking) =>
  judgeCurve(readings, limit, { ended: true, startAt: 0, ...context });

test.each([
  ['on the bound at the last minute, in °F', curve('°F', [1, 160], [90, 50]), 'met'],
  ['on the bound at the last minute, in °C', curve('°C', [1, 72], [90, 10]), 'met'],
  ['a hundredth above, in °F', curve('°F', [1, 160], [90, 50.01], [92, 50]), 'missed'],
  ['a hundredth above, in °C', curve('°C', [1, 72], [90, 10.01], [92, 10]), 'missed'],
  ['a minute late', curve('°F', [1, 160], [80, 55], [91, 50]), 'missed'],
  ['read too seldom to show it', curve('°F', [1, 160], [85, 51], [120, 40]), 'undetermined'],
  ['warm again', curve('°F', [1, 160], [60, 49], [70, 51], [95, 50]), 'missed'],
  ['still warm at the end', curve('°F', [1, 160], [60, 70]), 'missed'],
  ['one cold reading in time', curve('°F', [80, 45]), 'met'],
  ['one cold reading, too late to show it', curve('°F', [91, 45]), 'undetermined'],
])('a chill from the end of cooking, %s', (_case, readings, kind) => {
  expect(judge(readings).kind).toBe(kind);
});

test('it is said with its figures', () => {
  expect(judge(curve('°F', [1, 160], [80, 50]))).toMatchObject({
    finding: 'cooling-in-time',
    figures: {
      stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } },
      to: { value: '50', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      took: { value: '4800000', unit: 'ms' },
      spare: { value: '600000', unit: 'ms' },
    },
  });
  expect(limitFault(inAll)).toBeUndefined();
});

test('without a recorded end of cooking it is undetermined, whatever was read', () => {
  const readings = curve('°F', [1, 160], [20, 45]);
  expect(judge(readings, { startAt: undefined })).toMatchObject({
    kind: 'undetermined',
    finding: 'cooling-end-of-cooking-unknown',
    figures: { stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } } },
    parts: [{ measure: 'stage-not-timed' }],
  });
  expect(judge(readings, { startAt: undefined }, inAll).kind).toBe('undetermined');
});

test('while it runs it says by when; a reading before the end of cooking says nothing of the chill', () => {
  expect(judge(curve('°F', [1, 160], [30, 90]), { ended: false, now: 40 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } }, to: { value: '50', unit: '°F' } },
      deadline: 5400000,
      since: 0,
    },
    finding: 'cooling-running',
    figures: {
      stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } },
      to: { value: '50', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      reading: { value: '90', unit: '°F' },
      took: { value: '1800000', unit: 'ms' },
      left: { value: '3000000', unit: 'ms' },
      toGo: { value: '3600000', unit: 'ms' },
    },
  });
  const before = curve('°F', [-10, 45]);
  expect(judge(before, { ended: false, now: 10 * MINUTE })).toMatchObject({
    kind: 'undetermined',
    running: {
      code: 'cooling',
      figures: { stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } }, to: { value: '50', unit: '°F' } },
      deadline: 5400000,
      since: 0,
    },
    finding: 'cooling-nothing-since-cooking',
    figures: {
      stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } },
      to: { value: '50', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
      left: { value: '4800000', unit: 'ms' },
    },
  });
  expect(Object.keys(judge(before, { ended: false }).figures)).toEqual(['stage', 'to', 'allowed']);
  expect(judge(before, { ended: false, now: 91 * MINUTE })).toMatchObject({
    finding: 'cooling-overdue',
    figures: {
      stage: { code: 'from-cooking', figures: { to: { value: '50', unit: '°F' } } },
      to: { value: '50', unit: '°F' },
      allowed: { value: '5400000', unit: 'ms' },
    },
  });
  expect(Object.keys(judge(before, { ended: false, now: 91 * MINUTE }).figures)).toEqual(['stage', 'to', 'allowed']);
  expect(judge(before).kind).toBe('undetermined');
});

test('an end of cooking written down late does not shorten a chill that had begun', () => {
  const readings = curve('°F', [0, 160], [40, 120], [80, 60], [95, 50]);
  expect(judge(readings).kind).toBe('missed');
  expect(judge(readings, { startAt: 30 * MINUTE }).kind).toBe('undetermined');
  // A core that still warms is no chill yet.
  expect(judge(curve('°F', [-20, 150], [5, 158], [80, 50])).kind).toBe('met');
});

test('a later stage in all is counted from the end of cooking too', () => {
  expect(judge(curve('°F', [1, 160], [80, 50], [81, 49], [180, 40]), {}, inAll).kind).toBe('met');
  expect(judge(curve('°F', [1, 160], [80, 50], [81, 49], [170, 41], [181, 40]), {}, inAll)).toMatchObject({
    kind: 'missed',
    finding: 'cooling-too-late',
    figures: {
      stage: { code: 'from-cooking', figures: { to: { value: '40', unit: '°F' } } },
      to: { value: '40', unit: '°F' },
      allowed: { value: '10800000', unit: 'ms' },
      took: { value: '10860000', unit: 'ms' },
      over: { value: '60000', unit: 'ms' },
    },
  });
});

test('the start of chilling is not guessed from a clock that has no upper bound', () => {
  const begun = { ...fromCooking, startWithinSeconds: 30 * 60 };
  const readings = curve('°F', [1, 160], [80, 50]);
  expect(judge(readings, {}, begun)).toMatchObject({
    kind: 'undetermined',
    finding: 'chill-start-not-shown',
    figures: { within: { value: '1800000', unit: 'ms' } },
  });
  expect(judge(readings, { chillingBegan: chillingAt(30 * MINUTE) }, begun).kind).toBe('met');
  expect(judge(readings, { chillingBegan: chillingAt(31 * MINUTE) }, begun).kind).toBe('missed');
});

test('with an error of the thermometer the bound is lower by it', () => {
  const readings = curve('°F', [1, 160], [80, 50], [100, 48]);
  const instrumentError = { hundredths: 100, unit: '°F' as const };
  expect(judge(readings).kind).toBe('met');
  expect(judge(readings, { instrumentError })).toMatchObject({ kind: 'undetermined', finding: 'cooling-not-shown' });
  expect(judge(curve('°F', [1, 160], [80, 50], [100, 48.5]), { instrumentError })).toMatchObject({
    kind: 'missed',
    figures: { over: { value: '600000', unit: 'ms' }, to: { value: '49', unit: '°F' } },
  });
});

test('as it grows it is judged the same, whatever was recorded of the end of cooking', () => {
  const value = fc.integer({ min: 3500, max: 16_500 });
  const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), value), { minLength: 1, maxLength: 8 });
  const known = fc.option(fc.integer({ min: -60, max: 200 }), { nil: undefined });
  fc.assert(
    fc.property(steps, known, fc.constantFrom(fromCooking, inAll), fc.boolean(), (all, minute, limit, ended) => {
      let at = 0;
      const readings = all.map(([gap, hundredths]): CurveReading => {
        at += gap * MINUTE;
        return { at, temperature: { hundredths, unit: '°F' } };
      });
      const startAt = minute === undefined ? undefined : minute * MINUTE;
      const growing = beginCurve([limit], { startAt });
      for (const reading of readings) addReading(growing, reading);
      expect(judgeSoFar(growing, { ended })).toEqual([judgeCurve(readings, limit, { ended, startAt })]);
    }),
  );
});

test('it is explained step by step', () => {
  const readings = curve('°F', [1, 160], [80, 50]);
  const explained = (context: CurveContext) =>
    explainCooling(fromCooking, readings, context).steps.map(({ rule, putIn }) => `${plainPart(rule)}: ${plainPart(putIn)}`);
  expect(explained({ ended: true, startAt: 0 })).toContain(`end-less-start: 80' − 0'`);
  expect(explained({ ended: true })[0]).toMatch(/^begins-when-cooking-ends: /);
});
