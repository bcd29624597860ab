import { expect, test } from 'vitest';
import { coolingCured, coolingUncured } from '../../limit-sets/fsis-stabilization';
import type { CurveContext } from '../../limits/curve-context';
import { judgeCurve } from '../../limits/judge-curve';
import { degrees } from '../../quantity/degrees';
import type { CurveReading } from '../../thermal/curve';
import type { CoolingLimit } from './cooling-limit';
import { coolingExplainer } from './cooling-explainer';
import { coolingOf } from './cooling-of';

const MINUTE = 60_000;
const curve = (...points: [minutes: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));
const spans = (readings: CurveReading[], ended = true, limit: CoolingLimit = coolingUncured, context: Partial<CurveContext> = {}) =>
  coolingOf(readings, limit, { ended, ...context })?.spans ?? [];

test('every stage comes with what is needed to draw it', () => {
  expect(spans(curve([0, 140], [20, 120], [80, 80], [300, 45], [340, 39]))).toEqual([
    {
      from: { '°F': 13000, '°C': 5440 },
      to: { '°F': 8000, '°C': 2670 },
      startAt: 0,
      endAt: 80 * MINUTE,
      deadline: 90 * MINUTE,
      straight: { startAt: 10 * MINUTE, endAt: 80 * MINUTE },
      passings: {
        start: { after: 0, by: 20 * MINUTE, straight: 10 * MINUTE },
        end: { after: 20 * MINUTE, by: 80 * MINUTE, straight: 80 * MINUTE },
      },
      gap: undefined,
      finding: 'in time',
      verdict: 'met',
    },
    {
      from: { '°F': 8000, '°C': 2670 },
      to: { '°F': 4000, '°C': 440 },
      startAt: 80 * MINUTE,
      endAt: 340 * MINUTE,
      deadline: 380 * MINUTE,
      straight: { startAt: 80 * MINUTE, endAt: expect.closeTo(333.33 * MINUTE, -3) as number },
      passings: {
        start: { after: 80 * MINUTE, by: 300 * MINUTE, straight: 80 * MINUTE },
        end: { after: 300 * MINUTE, by: 340 * MINUTE, straight: expect.closeTo(333.33 * MINUTE, -3) as number },
      },
      gap: undefined,
      finding: 'in time',
      verdict: 'met',
    },
  ]);
});

test('a stage that has not begun has no instants', () => {
  expect(spans(curve([0, 150]), false)).toMatchObject([
    { finding: 'not begun', verdict: 'undetermined' },
    { finding: 'not begun', verdict: 'undetermined' },
  ]);
  expect(spans(curve([0, 150]))[0]).not.toHaveProperty('startAt');
});

test('towards a chiller of known temperature the core passes the upper bound earlier than a straight line does', () => {
  const chilled = (chiller: number) =>
    spans(curve([0, 141], [300, 79], [900, 44]), true, coolingCured, { chiller: degrees(chiller, '°F') }).flatMap(({ passings }) => [
      passings?.start?.chilled,
      passings?.end?.chilled,
    ]);
  // Worked out beforehand for an air of 36 °F: 130 at 37.188, 80 at 292.275, 45 at 857.979 min.
  expect(chilled(36).map((instant) => (instant ?? NaN) / MINUTE)).toEqual(
    [37.188, 292.275, 292.275, 857.979].map((minute) => expect.closeTo(minute, 3) as number),
  );
  expect(chilled(60)[3]).toBeUndefined();
});

test('an interval of half an hour needs no second estimate', () => {
  const readings = curve([0, 131], [30, 129], [60, 80], [300, 40]);
  const [first] = spans(readings, true, coolingUncured, { chiller: degrees(34, '°F') });
  expect(first?.passings?.start).toEqual({ after: 0, by: 30 * MINUTE, straight: 15 * MINUTE });
});

test('a stage is drawn as it is judged, by what the thermometer may be wrong by', () => {
  const readings = curve([0, 135], [10, 128], [60, 90], [80, 79.5]);
  const drawn = (context: CurveContext) => {
    const verdict = judgeCurve(readings, coolingUncured, context);
    const [first] = coolingExplainer.stretches(coolingUncured, { verdict, readings, unit: '°F', context });
    return [first?.kind, first?.endAt];
  };
  expect(drawn({ ended: true })).toEqual(['met', 80 * MINUTE]);
  expect(drawn({ ended: true, instrumentError: degrees(1.8, '°F') })).toEqual(['missed', undefined]);
  expect(drawn({ ended: false, instrumentError: degrees(1.8, '°F') })).toEqual(['running', undefined]);
  expect(drawn({ ended: true, instrumentError: { hundredths: NaN, unit: '°F' } })).toEqual([undefined, undefined]);
});
