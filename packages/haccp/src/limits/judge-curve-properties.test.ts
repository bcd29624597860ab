import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coolingFoodCode } from '../limit-sets/food-code';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { atMostOneLogGrown, salmonellaKilled } from '../limit-sets/fsis-processes';
import { coolingFromCooking, coolingUncured } from '../limit-sets/fsis-stabilization';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { instantOf } from '../thermal/time-in-band';
import { chillingAt } from '../kinds/cooling/chilling-at.test-data';
import type { CurveContext } from './curve-context';
import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { CurveLimit } from './limit';
import { addToLimit, beginLimit, judgeLimit } from './one-limit-so-far';

const MINUTE = 60_000;
const supported = { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' };

/** The arithmetic alone, without what is doubted about the readings: a spike is one by the time between neighbours. */
function judge(readings: CurveReading[], limit: CurveLimit, context: CurveContext) {
  const one = beginLimit(limit, context);
  const curve = prepareCurve(readings);
  curve.colder.forEach((_, index) => addToLimit(one, instantOf(curve, index)));
  return judgeLimit(one, [], context).kind;
}

/** Clocks that start when cooking ends: alone, and before a stage of its own and one in all. */
const fromCooking: CoolingLimit = {
  ...coolingFoodCode,
  stages: [{ to: { '°F': 5000, '°C': 1000 }, withinSeconds: 90 * 60, counted: 'end of cooking' }],
};
const fromCookingThenOn: CoolingLimit = {
  ...coolingFoodCode,
  stages: [
    { to: { '°F': 8000 }, withinSeconds: 120 * 60, counted: 'end of cooking' },
    { from: { '°F': 8000 }, to: { '°F': 5000 }, withinSeconds: 120 * 60, counted: 'stage' },
    { from: { '°F': 5000 }, to: { '°F': 4000 }, withinSeconds: 300 * 60, counted: 'start' },
  ],
};

const limits = fc.constantFrom<CurveLimit>(
  cookedMeat65Log,
  coolingUncured,
  coolingFoodCode,
  coolingFromCooking,
  comeUpWithinSixHours,
  supported,
  atMostOneLogGrown,
  fromCooking,
  fromCookingThenOn,
);
const onBounds = fc.constantFrom(13_000, 13_100, 8000, 4000, 5000, 15_800);
const value = fc.oneof(fc.integer({ min: 3500, max: 16_500 }), onBounds);
const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 90 }), value), { minLength: 2, maxLength: 9 });
const shapes = fc.constantFrom('any', 'falling', 'rising');
const curves = fc.tuple(steps, shapes).map(([all, shape]) => {
  const values = all.map(([, one]) => one);
  if (shape !== 'any') values.sort((a, b) => (shape === 'falling' ? b - a : a - b));
  let at = 0;
  return all.map(([gap], i): CurveReading => {
    at += gap * MINUTE;
    return { at, temperature: { hundredths: values[i] ?? 0, unit: '°F' } };
  });
});
/** Before the first reading: a record of the end of cooking amid the readings would move against them. */
const instant = fc.option(
  fc.integer({ min: -60, max: 0 }).map((minute) => minute * MINUTE),
  { nil: undefined },
);
const contexts = fc.record({ ended: fc.boolean(), startAt: instant, chillingBegan: fc.constantFrom(undefined, chillingAt(0)) });
const error = (hundredths: number) => ({ hundredths, unit: '°F' as const });

const anyInstant = fc.option(
  fc.integer({ min: -60, max: 200 }).map((minute) => minute * MINUTE),
  { nil: undefined },
);
const began = fc.constantFrom(undefined, chillingAt(0), chillingAt(90 * MINUTE), chillingAt(0, 60 * MINUTE));
const anyContexts = fc.record({ ended: fc.boolean(), startAt: anyInstant, chillingBegan: began });

test('a larger error of the thermometer never turns missed or undetermined into met', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(curves, limits, anyContexts, fc.nat(600), fc.nat(600), (readings, limit, context, small, more) => {
      const by = (hundredths: number) => judge(readings, limit, { ...context, instrumentError: error(hundredths) });
      if (by(small) !== 'met') expect(by(small + more)).not.toBe('met');
    }),
    { numRuns: 2000 },
  );
});

test('a longer gap never turns missed or undetermined into met', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(curves, limits, contexts, fc.nat(), fc.integer({ min: 1, max: 9000 }), (all, limit, known, pick, by) => {
      const late = 1 + (pick % (all.length - 1));
      const widened = (seconds: number) =>
        judge(
          all.map((one, i) => ({ ...one, at: one.at + (i >= late ? seconds * 1000 : 0) })),
          limit,
          known,
        );
      // From what a hold tolerates on: up to there a longer time at the temperature is a longer hold.
      if (widened(901) !== 'met') expect(widened(901 + by)).not.toBe('met');
    }),
    { numRuns: 1000 },
  );
});

test('leaving out a reading of a rising or falling stretch never turns missed or undetermined into met', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(curves, limits, contexts, fc.nat(), (readings, limit, context, pick) => {
      fc.pre(readings.length > 2);
      const index = 1 + (pick % (readings.length - 2));
      const values = readings.map(({ temperature }) => temperature.hundredths);
      const [a = 0, own = 0, b = 0] = values.slice(index - 1, index + 2);
      fc.pre(own >= Math.min(a, b) && own <= Math.max(a, b));
      const thinned = readings.filter((_, i) => i !== index);
      if (judge(readings, limit, context) !== 'met') expect(judge(thinned, limit, context)).not.toBe('met');
    }),
    { numRuns: 1000 },
  );
});

test('nor does it amid a record of the end of cooking, for a clock that starts there', () => {
  const clocks = fc.constantFrom(fromCooking, fromCookingThenOn);
  const amid = fc.integer({ min: -60, max: 300 }).map((minute) => ({ ended: true, startAt: minute * MINUTE }));
  fc.assert(
    fc.property(curves, clocks, amid, fc.nat(), (readings, limit, context, pick) => {
      fc.pre(readings.length > 2);
      const index = 1 + (pick % (readings.length - 2));
      const [a = 0, own = 0, b = 0] = readings.slice(index - 1, index + 2).map((one) => one.temperature.hundredths);
      fc.pre(own <= a && own >= b);
      const thinned = readings.filter((_, i) => i !== index);
      if (judge(readings, limit, context) !== 'met') expect(judge(thinned, limit, context)).not.toBe('met');
    }),
    { numRuns: 2000 },
  );
});

test('a later record of the end of cooking never makes up for readings that were falling before it', () => {
  const late = fc.record({ first: fc.integer({ min: 0, max: 40 }), by: fc.integer({ min: 1, max: 120 }) });
  fc.assert(
    fc.property(curves, late, (readings, { first, by }) => {
      const falling = [...readings].sort((a, b) => a.at - b.at);
      const values = falling.map(({ temperature }) => temperature.hundredths).sort((a, b) => b - a);
      const chill = falling.map((one, i) => ({ ...one, temperature: { ...one.temperature, hundredths: values[i] ?? 0 } }));
      const began = (chill[0]?.at ?? 0) - first * MINUTE;
      const context = { ended: true };
      if (judge(chill, fromCooking, { ...context, startAt: chill[0]?.at }) === 'met') return;
      const recorded = began + (first + by) * MINUTE;
      const strictly = values.every((value, i) => i === 0 || value < (values[i - 1] ?? Infinity));
      fc.pre(strictly);
      expect(judge(chill, fromCooking, { ...context, startAt: recorded })).not.toBe('met');
    }),
    { numRuns: 1000 },
  );
});

test('the same instants later are judged the same', () => {
  fc.assert(
    fc.property(curves, limits, anyContexts, fc.integer({ min: -1e12, max: 1e12 }), (readings, limit, known, by) => {
      const later = (at: number | undefined) => (at === undefined ? undefined : at + by);
      const began = known.chillingBegan && chillingAt(...known.chillingBegan.answers.map(({ at }) => at + by));
      const moved = readings.map((reading) => ({ ...reading, at: reading.at + by }));
      const context = { ...known, startAt: later(known.startAt), chillingBegan: began };
      expect(judge(moved, limit, context)).toBe(judge(readings, limit, known));
    }),
  );
});
