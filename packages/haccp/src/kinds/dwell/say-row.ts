import { formatPrinted } from '../../quantity/bound';
import { millisecondsOf, formatDuration } from '../../quantity/duration';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { DwellRow } from './dwell-limit';

/** One row of a dwell table: "145 °F for 4 min", "158 °F, no holding time". */
export function sayRow({ at, seconds }: DwellRow, unit: TemperatureUnit): string {
  const figure = formatPrinted(at, unit);
  return seconds === 0 ? `${figure}, no holding time` : `${figure} for ${formatDuration(millisecondsOf(seconds))}`;
}
