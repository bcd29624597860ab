import { printedIn } from '../../quantity/quantities';
import type { PrintedTemperature, TemperatureUnit } from '../../quantity/temperature';
import type { Phrase, Span } from '../../limits/verdict';

/** "130 → 80 °F", "end of cooking → 46.4 °F". */
export const stageOf = (from: PrintedTemperature | undefined, to: PrintedTemperature, unit: TemperatureUnit): Span | Phrase =>
  from ? { from: printedIn(from, unit), to: printedIn(to, unit) } : { code: 'from-cooking', figures: { to: printedIn(to, unit) } };
