import type { MassUnit } from './mass';
import type { TemperatureUnit } from './temperature';

/** What a figure is a figure of. Lengths of time are in milliseconds, a growth and a kill in powers of ten. */
export type QuantityUnit =
  | TemperatureUnit
  | MassUnit
  | 'ms'
  | 'pH'
  | 'aw'
  | '%'
  | 'ppm'
  | '°C·h'
  | '°F·h'
  | 'log10'
  | 'ratio'
  | 'cm'
  | 'mm'
  | 'in'
  | 'cfu/g'
  | 'min'
  | 'h'
  | 'days'
  | 'hPa'
  | 'm';

/**
 * An exact figure with its unit, as data: whoever shows it puts it into words. The value is a decimal number as text,
 * because a figure of the record may not pass through a floating-point number.
 */
export type Quantity = { value: string; unit: QuantityUnit };
