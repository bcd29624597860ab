import { drawnFigure, sayPrinted, type CriticalLimit, type PrintedTemperature, type TemperatureUnit } from '@larderbook/haccp';

/** A figure of a limit, ruled down the margin. */
export type Figure = { value: number; label: string };

/** The figures of a limit that a temperature curve is drawn against. A long table shows its first and last row. */
export function figuresOf(limit: CriticalLimit, unit: TemperatureUnit): Figure[] {
  return printedOf(limit).map((printed) => ({ value: drawnFigure(printed, unit), label: sayPrinted(printed, unit) }));
}

function printedOf(limit: CriticalLimit): PrintedTemperature[] {
  switch (limit.kind) {
    case 'dwell':
      return ends(limit.rows.map(({ at }) => at));
    case 'bandTime':
      return [limit.from, limit.to];
    case 'cooling':
      return [...limit.stages.slice(0, 1).flatMap(({ from }) => from ?? []), ...limit.stages.map(({ to }) => to)];
    case 'range':
      return [limit.min, limit.max].filter((bound): bound is PrintedTemperature => typeof bound === 'object');
    default:
      return [];
  }
}

const ends = <T>(all: T[]): T[] => (all.length <= 2 ? all : [all[0], all.at(-1)].filter((one): one is T => one !== undefined));
