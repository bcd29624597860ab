import { plainPart } from '../limits/plain-part.test-data';
import { describe, expect, test } from 'vitest';
import { judgeCurve } from '../limits/judge-curve';
import type { CurveContext } from '../limits/curve-context';
import type { CurveLimit } from '../limits/limit';
import { comeUpWithinSixHours } from '../limit-sets/fsis-come-up';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { atMostOneLogGrown } from '../limit-sets/fsis-processes';
import { coolingUncured } from '../limit-sets/fsis-stabilization';
import { degrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import { stretchesOf } from './stretches-of';

const MINUTE = 60_000;
type Point = [minutes: number, fahrenheit: number];
const curve = (points: Point[], probe?: string): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, '°F'), probe }));

function stretches(limit: CurveLimit, readings: CurveReading[], context: CurveContext = { ended: true }) {
  const drawn = stretchesOf(limit, judgeCurve(readings, limit, context), readings, context);
  const minutes = (at: number | undefined) => at && at / MINUTE;
  return drawn.map(({ label, startAt, endAt, deadline, kind }) => [
    plainPart(label),
    minutes(startAt),
    minutes(endAt),
    minutes(deadline),
    kind,
  ]);
}

describe('as stretches of time', () => {
  test('a chill has its stages, each with its own end and time', () => {
    const chill = curve([
      [10, 140],
      [20, 125],
      [60, 79],
      [120, 60],
    ]);
    expect(stretches(coolingUncured, chill, { ended: false })).toEqual([
      ['130 → 80 °F', 10, 60, 100, 'met'],
      ['80 → 40 °F', 20, undefined, 320, 'running'],
    ]);
    expect(stretches(coolingUncured, chill).map(([, , , , kind]) => kind)).toEqual(['met', 'missed']);
    expect(stretches(coolingUncured, curve([[10, 140]]), { ended: false })).toEqual([]);
  });

  test('a come-up is as long as it can have been inside', () => {
    const cook = curve([
      [10, 40],
      [20, 60],
      [100, 131],
    ]);
    expect(stretches(comeUpWithinSixHours, cook)).toEqual([['50 → 130 °F', 10, 100, 370, 'met']]);
    expect(stretches(comeUpWithinSixHours, cook.slice(0, 2), { ended: false })).toEqual([['50 → 130 °F', 10, undefined, 370, 'running']]);
    expect(stretches(comeUpWithinSixHours, cook.slice(0, 1))).toEqual([]);
  });

  test('a hold is what stood at the lowest row; while it runs, the row that will be held first', () => {
    const cook = curve([
      [10, 120],
      [20, 135],
      [30, 140],
      [40, 125],
    ]);
    expect(stretches(cookedMeat65Log, cook)).toEqual([['≥ 130 °F', 20, 30, undefined, 'missed']]);
    expect(stretches(cookedMeat65Log, cook.slice(0, 3), { ended: false })).toEqual([
      ['dwell-hold.bound 140 °F 12 min', 30, undefined, 42, 'running'],
    ]);
    expect(stretches(cookedMeat65Log, cook.slice(0, 1))).toEqual([]);
    expect(stretches({ ...cookedMeat65Log, rows: [] }, cook)).toEqual([]);
  });

  test('is that of the probe that governs, and nothing without a reading or for a kind without stages', () => {
    const both = [...curve([[10, 150]], 'A'), ...curve([[20, 131]], 'B')];
    expect(stretches(cookedMeat65Log, both)).toEqual([['≥ 130 °F', 20, 20, undefined, 'missed']]);
    expect(stretches(cookedMeat65Log, [])).toEqual([]);
    expect(stretches(atMostOneLogGrown, both)).toEqual([]);
  });
});
