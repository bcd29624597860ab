import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coolingFoodCode } from '../limit-sets/food-code';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingFromCooking, coolingUncured } from '../limit-sets/fsis-stabilization';
import { atMostOneLogGrown, salmonellaKilled } from '../limit-sets/fsis-processes';
import { degrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import { chillingAt } from '../kinds/cooling/chilling-at.test-data';
import type { CurveContext } from './curve-context';
import { judgeCurve, judgeCurveByAll } from './judge-curve';
import { addReading, beginCurve, judgeSoFar, type CurveSoFar } from './judge-curve-so-far';

const MINUTE = 60_000;
const supported = { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' };
const limits = [cookedMeat65Log, coolingUncured, coolingFoodCode, coolingFromCooking, comeUpWithinSixHours, supported, atMostOneLogGrown];
const curve = (...points: [minutes: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));

const hundredths = fc.oneof(
  { weight: 9, arbitrary: fc.integer({ min: 3000, max: 17_000 }) },
  fc.constantFrom(NaN, 90_000, 13_000, 8000, 15_800),
);
const step = fc.record({
  gap: fc.oneof(fc.constantFrom(0, MINUTE, 10_000), fc.integer({ min: 0, max: 100 * MINUTE })),
  hundredths,
  unit: fc.constantFrom<TemperatureUnit>('°F', '°F', '°F', '°C'),
  probe: fc.constantFrom(undefined, undefined, 'A'),
});
const curves = fc.array(step, { maxLength: 14 }).map((steps) => {
  let at = 0;
  return steps.map(({ gap, hundredths, unit, probe }): CurveReading => {
    at += gap;
    return { at, temperature: { hundredths, unit }, probe };
  });
});
const instant = fc.option(
  fc.integer({ min: -100, max: 900 }).map((minute) => minute * MINUTE),
  { nil: undefined },
);
const contexts = fc.record<CurveContext>({
  ended: fc.boolean(),
  now: instant,
  startAt: instant,
  chillingBegan: fc
    .array(fc.integer({ min: -100, max: 900 }), { maxLength: 2 })
    .map((all) => chillingAt(...all.map((minute) => minute * MINUTE))),
  chiller: fc.constantFrom(undefined, degrees(34, '°F')),
  instrumentError: fc.constantFrom(undefined, degrees(0, '°C'), degrees(1, '°F')),
});

test('at every reading the verdicts are those of the whole series up to it', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(curves, contexts, (readings, context) => {
      const growing = beginCurve(limits, context);
      expect(judgeSoFar(growing, context)).toEqual(judgeCurveByAll([], limits, context));
      readings.forEach((reading, index) => {
        expect(addReading(growing, reading)).toBe(true);
        const whole = readings.slice(0, index + 1);
        expect(judgeSoFar(growing, context)).toEqual(limits.map((limit) => judgeCurve(whole, limit, context)));
      });
    }),
    { numRuns: 60 },
  );
});

test('readings that are not in order of time are sorted, and it is said', () => {
  const verdicts = judgeCurveByAll(curve([10, 150], [0, 140], [20, 160]), limits, { ended: true });
  expect(verdicts[0]?.notes).toContainEqual({ code: 'sorted' });
});

test('a reading that comes late is refused, and from then on nothing is met', () => {
  const growing = beginCurve([cookedMeat65Log]);
  expect(curve([5, 160], [4, 160]).map((reading) => addReading(growing, reading))).toEqual([true, false]);
  expect(judgeSoFar(growing, { ended: true })).toMatchObject([{ kind: 'undetermined', finding: 'out-of-order' }]);
});

test('a hundred thousand readings leave the state as small as it was', () => {
  const growing = beginCurve(limits);
  const size = (curve: CurveSoFar) => JSON.stringify([...curve.probes]).length;
  const add = (i: number) => addReading(growing, { at: i * 1000, temperature: { hundredths: 14_000 + (i % 7), unit: '°F' } });
  for (let i = 0; i < 1000; i += 1) add(i);
  const before = size(growing);
  for (let i = 1000; i < 100_000; i += 1) add(i);
  expect(size(growing)).toBeLessThan(before * 1.2);
});

test('an error of the thermometer that is no figure judges nothing', () => {
  const context = { ended: true, instrumentError: { hundredths: NaN, unit: '°F' as const } };
  const readings = curve([0, 160]);
  const unusable = { kind: 'undetermined', finding: 'error-unusable' };
  const growing = beginCurve([cookedMeat65Log], context);
  for (const reading of readings) addReading(growing, reading);
  expect(judgeSoFar(growing, context)).toMatchObject([unusable]);
  expect(judgeCurve(readings, cookedMeat65Log, context)).toMatchObject(unusable);
});

test('more readings than can be judged are refused in words', () => {
  const many = { length: 10_000_000 } as CurveReading[];
  expect(judgeCurve(many, cookedMeat65Log, { ended: true })).toMatchObject({
    kind: 'undetermined',
    finding: 'too-many-readings',
    figures: { readings: 10_000_000, atMost: 1_000_000 },
  });
});

test('a verdict names the readings it rests on', () => {
  const readings = [...curve([0, 140], [5, 160]), { at: 6 * MINUTE, temperature: degrees(999, '°F') }];
  expect(judgeCurve(readings, cookedMeat65Log, { ended: true })).toMatchObject({
    kind: 'met',
    restsOn: { readings: 2, leftOut: 1, from: 0, to: 5 * MINUTE },
  });
});
