import { expect, test } from 'vitest';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { degrees } from '../quantity/degrees';
import { prepareCurve, type CurveReading } from './curve';
import { stageSpans } from './stage-spans';

const MINUTE = 60_000;
const curve = (...points: [minutes: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F') }));
const spans = (readings: CurveReading[], ended = true) => stageSpans(prepareCurve(readings), coolingUncured, { ended });

test('every stage comes with what is needed to draw it', () => {
  expect(spans(curve([0, 140], [20, 120], [80, 80], [300, 45], [340, 39]))).toEqual([
    {
      from: { '°F': 13000, '°C': 5440 },
      to: { '°F': 8000, '°C': 2670 },
      startAt: 0,
      endAt: 80 * MINUTE,
      deadline: 90 * MINUTE,
      straight: { startAt: 10 * MINUTE, endAt: 80 * MINUTE },
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
