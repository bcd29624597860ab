import type { MassUnit } from './mass';
import type { TemperatureUnit } from './temperature';

/** Times are in milliseconds, growth and kill in powers of ten. */
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

/** Value as decimal text, because a figure of the record may not pass through a floating-point number. */
export type Quantity = { value: string; unit: QuantityUnit };
