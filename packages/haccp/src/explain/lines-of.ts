import type { CriticalLimit } from '../limits/limit';
import type { DwellRow } from '../kinds/dwell/dwell-limit';
import { sayRow } from '../limits/say-limit';
import { sayPrinted } from '../quantity/bound';
import { sayDuration } from '../quantity/duration';
import type { Degrees, PrintedTemperature, TemperatureUnit } from '../quantity/temperature';
import { drawnFigure } from './drawn-degrees';
import type { LineDrawn } from './drawing';

/**
 * The figures of a limit as lines ruled across a curve, each with its label.
 * @param peak the hottest point of the curve: of a table the row it could satisfy is ruled
 */
export function linesOf(limit: CriticalLimit, unit: TemperatureUnit, peak: number): LineDrawn[] {
  const line = (at: PrintedTemperature, label: string): LineDrawn => ({ value: drawnFigure(at, unit), label });
  switch (limit.kind) {
    case 'dwell':
      return rowToDraw(limit.rows, unit, peak).map((row) => line(row.at, `≥ ${sayRow(row, unit)}`));
    case 'cooling':
      return limit.stages.flatMap(({ from, to, withinSeconds }, index) => [
        ...(index === 0 && from ? [line(from, sayPrinted(from, unit))] : []),
        line(to, `${sayPrinted(to, unit)} within ${sayDuration(withinSeconds * 1000)}`),
      ]);
    case 'bandTime':
      return [line(limit.from, sayPrinted(limit.from, unit)), line(limit.to, sayPrinted(limit.to, unit))];
    case 'lethality':
      return [line(limit.floor, `counted from ${sayPrinted(limit.floor, unit)}`)];
    case 'degreeHours': {
      const base = { [limit.base.unit]: limit.base.hundredths };
      return [line(base, `counted over ${sayPrinted(base, unit)}`)];
    }
    case 'range':
      return [
        ...(typeof limit.min === 'object' ? [line(limit.min, `≥ ${sayPrinted(limit.min, unit)}`)] : []),
        ...(typeof limit.max === 'object' ? [line(limit.max, `≤ ${sayPrinted(limit.max, unit)}`)] : []),
      ];
    default:
      return [];
  }
}

/** Of a table of rows the one that the curve could satisfy: the hottest it reached, or else the coldest. */
function rowToDraw(rows: readonly DwellRow[], unit: TemperatureUnit, peak: number): DwellRow[] {
  const ordered = [...rows].sort((a, b) => drawnFigure(a.at, unit) - drawnFigure(b.at, unit));
  const reached = ordered.filter(({ at }) => drawnFigure(at, unit) <= peak);
  return reached.length > 0 ? reached.slice(-1) : ordered.slice(0, 1);
}

/** What the thermometer may be wrong by, drawn either side of a line. */
export function withError(line: LineDrawn, error: Degrees | undefined, unit: TemperatureUnit): LineDrawn {
  const by = drawnError(error, unit);
  return by === 0 ? line : { ...line, band: [line.value - by, line.value + by] };
}

export const drawnError = (error: Degrees | undefined, unit: TemperatureUnit): number =>
  error ? (Math.abs(error.hundredths) / 100) * (error.unit === unit ? 1 : unit === '°F' ? 1.8 : 1 / 1.8) : 0;
