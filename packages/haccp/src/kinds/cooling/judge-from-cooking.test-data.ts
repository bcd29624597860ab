import type { CurveContext } from '../../limits/curve-context';
import { judgeSeries } from '../../limits/judge-series';
import type { SeriesLimit } from '../../limits/limit';
import { seriesOf, type ReadValue } from '../../limits/series-of';
import type { Verdict } from '../../limits/verdict';

export const MINUTE = 60_000;
export type Point = [minutes: number, fahrenheit: number];

export const reads = (points: readonly Point[], unit = '°F'): ReadValue[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, value, unit }));

/** `end` is the recorded end of cooking, in minutes. */
export const judge = (points: readonly Point[], limit: SeriesLimit, end: number | undefined, more: Partial<CurveContext> = {}): Verdict => {
  const startAt = end === undefined ? undefined : end * MINUTE;
  return judgeSeries(seriesOf(reads(points)), [limit], { ended: true, startAt, ...more })[0] as Verdict;
};
