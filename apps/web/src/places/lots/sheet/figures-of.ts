import { drawnFigure, kindOf, formatPrinted, type CriticalLimit, type TemperatureUnit } from '@larderbook/haccp';

export type Figure = { value: number; label: string };

/** A long table shows its first and last row. */
export const figuresOf = (limit: CriticalLimit, unit: TemperatureUnit): Figure[] =>
  kindOf(limit)
    .ruled(limit)
    .map((printed) => ({ value: drawnFigure(printed, unit), label: formatPrinted(printed, unit) }));
