import { timeOf } from '../quantity/quantities';
import type { Coded, Figures } from './verdict';

const MINUTE = 60_000;

/** An estimate, to the minute. */
export const byStraightLines = (kind: 'dwell' | 'cooling' | 'band', estimate: number, figures: Figures = {}): Coded =>
  estimate < MINUTE
    ? { code: `${kind}-straight-briefly`, figures }
    : { code: `${kind}-straight`, figures: { ...figures, straight: timeOf(Math.round(estimate / MINUTE) * MINUTE) } };
