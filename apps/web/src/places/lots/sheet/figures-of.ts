import { drawnFigure, kindOf, formatPrinted, type CriticalLimit, type TemperatureUnit } from '@larderbook/haccp';

/** A figure of a limit, ruled down the margin. */
export type Figure = { value: number; label: string };

/** The figures of a limit that a temperature curve is drawn against. A long table shows its first and last row. */
export const figuresOf = (limit: CriticalLimit, unit: TemperatureUnit): Figure[] =>
  kindOf(limit)
    .ruled(limit)
    .map((printed) => ({ value: drawnFigure(printed, unit), label: formatPrinted(printed, unit) }));
