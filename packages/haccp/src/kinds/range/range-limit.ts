import type { Cited, StrictSigns } from '../../limits/source';
import type { PrintedTemperature } from '../../quantity/temperature';

/** Temperatures compare in the unit read; the others are plain numbers. */
export type Measured = 'temperature' | 'pH' | 'aw' | 'percent';

/**
 * Met within the bounds, both included unless `signs` says otherwise. Temperatures in hundredths per printed unit;
 * others ×1000.
 */
export type RangeLimit = Cited & {
  kind: 'range';
  measured: Measured;
  min?: PrintedTemperature | number;
  max?: PrintedTemperature | number;
  signs?: StrictSigns;
};
