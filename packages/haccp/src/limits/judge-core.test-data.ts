import type { Word } from '../thermal/instant';
import type { Piece } from '../thermal/piece';
import type { CurveContext } from './curve-context';
import { judgeSeries } from './judge-series';
import type { SeriesLimit } from './limit';
import { seriesOf, type ReadValue } from './series-of';

export const MINUTE = 60_000;
export type Point = [minutes: number, fahrenheit: number, word?: Word];

export const read = (points: Point[]): ReadValue[] =>
  points.map(([minutes, value, word]) => ({ at: minutes * MINUTE, value: Math.round(value * 100) / 100, unit: '°F', word }));

export const judge = (points: Point[], limit: SeriesLimit, context: Partial<CurveContext> = {}) =>
  judgeSeries(seriesOf(read(points)), [limit], { ended: true, ...context })[0];

export const thin: Piece = { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } };
export const log: Piece = { shape: 'cylinder', smallest: { value: 60, unit: 'mm' } };
export const ham: Piece = { shape: 'sphere', smallest: { value: 120, unit: 'mm' } };

export const steps = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

/** 141 °F falling 0.02 °F a minute for 20 minutes, then 37 °F; read every so many minutes. */
export const chill = (every: number): Point[] =>
  steps(Math.floor(60 / every) + 1).map((i) => [i * every, i * every <= 20 ? 141 - 0.02 * i * every : 37]);
