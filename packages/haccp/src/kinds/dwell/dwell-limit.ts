import type { Cited } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/** Met when any row is: the core stayed at or above `at` for `seconds`. */
export type DwellLimit = Cited & { kind: 'dwell'; rows: DwellRow[]; longestGapSeconds: number };
export type DwellRow = { at: PrintedTemperature; seconds: number };
