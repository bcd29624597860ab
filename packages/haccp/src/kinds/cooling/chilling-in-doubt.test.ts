import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coolingFoodCode } from '../../limit-sets/food-code';
import { coolingFromCooking, coolingUncured } from '../../limit-sets/fsis-stabilization';
import type { CurveContext } from '../../limits/curve-context';
import { chillingAt } from './chilling-at.test-data';
import type { CurveReading } from '../../thermal/curve';
import { coolingOf } from './cooling-of';
import { judgeCoolingSoFar } from './judge-cooling';
import { MINUTE, curve, judge } from './judge-chill.test-data';

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

test('an answer is what tells when chilling began, and a core cold in time only where nobody answered', () => {
  const bench = curve('°F', [10, 150], [80, 130], [100, 119], [360, 55]);
  const began = (context: Partial<CurveContext>, readings = bench) => judge(readings, context, coolingFromCooking).parts?.[0];
  const at = (minutes: number) => ({ startAt: 0, chillingBegan: chillingAt(minutes * MINUTE) });
  expect(began(at(30))).toMatchObject({ kind: 'met', finding: 'chill-start-in-time' });
  expect(began(at(91))).toMatchObject({ kind: 'missed', finding: 'chill-start-too-late' });
  expect(began({ startAt: 0 })).toMatchObject({ kind: 'undetermined', finding: 'chill-start-not-shown' });
  const cold = curve('°F', [10, 150], [20, 120], [30, 110], [360, 55]);
  expect(began({ startAt: 0 }, cold)).toMatchObject({ kind: 'met', finding: 'chill-start-by-core' });
  expect(began(at(31), cold)).toMatchObject({ kind: 'met', finding: 'chill-start-in-time' });
});

test('a reading that may just be above by the error of the thermometer hides no start of chilling', () => {
  const context = { startAt: 0, instrumentError: { hundredths: 100, unit: '°F' as const } };
  const chill = curve('°F', [10, 150], [20, 130], [30, 119.5], [40, 110], [300, 54]);
  expect(judge(chill, context, coolingFromCooking).kind).toBe('met');
  expect(judge(chill.slice(0, 3), { ...context, ended: false }, coolingFromCooking)).toMatchObject({
    finding: 'chill-start-not-shown',
    figures: { within: { value: '5400000', unit: 'ms' }, from: { value: '119', unit: '°F' } },
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
  expect(judge(bounds)).toMatchObject({ kind: 'missed' });
  expect(judge(curve('°F', [0, 130], [90, 80], [90, 81], [100, 70], [390, 40]))).toMatchObject({ kind: 'missed' });
});

/** By the stages alone: a reading too fast for the core is doubt of its own, which goes with it. */
function byStages(readings: readonly CurveReading[], context: CurveContext) {
  const cooled = coolingOf(readings, coolingUncured, context);
  return cooled && judgeCoolingSoFar(cooled.cooling, [], context).kind;
}

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
        if (byStages(readings, context) === 'met') return;
        const index = 1 + (pick % (readings.length - 2));
        const [before = 0, own = 0, after = 0] = values.slice(index - 1, index + 2);
        if (own >= Math.min(before, after) && own <= Math.max(before, after)) {
          const without = readings.filter((_, i) => i !== index);
          expect(byStages(without, context)).not.toBe('met');
        }
        const later = readings.map((reading, i) => ({ ...reading, at: reading.at + (i >= index ? 45 * MINUTE : 0) }));
        expect(byStages(later, context)).not.toBe('met');
      },
    ),
    { numRuns: 2000 },
  );
});
