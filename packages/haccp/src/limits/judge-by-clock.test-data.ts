import type { AsKept } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import { judgeSeries } from './judge-series';
import type { SeriesLimit } from './limit';
import { seriesOf, type ReadValue } from './series-of';

export const MINUTE = 60_000;
export type Point = [minutes: number, value: number, kept?: AsKept & { unit?: string }];

export const read = (points: readonly Point[], unit: string): ReadValue[] =>
  points.map(([minutes, value, kept]) => ({ at: minutes * MINUTE, value, unit, ...kept }));

export const judge = (reads: readonly ReadValue[], limit: SeriesLimit, context: Partial<CurveContext> = {}) =>
  judgeSeries(seriesOf(reads), [limit], { ended: true, ...context })[0];

export const right = { word: 'time is right' } as const;
