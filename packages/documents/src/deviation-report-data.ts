import type { DeviationData, ReadingData } from './entry-data';
import type { SheetData } from './sheet-data';

/** One deviation on a sheet of its own: 9 CFR 417.3. */
export type DeviationReportData = {
  sheet: SheetData;
  /** What it is about: a lot, or a delivery that was not right on arrival. */
  lot: { kind?: 'lot' | 'delivery'; code: string; product: string };
  hazard: string;
  /** What the plan prepared for this case. */
  preparedAction?: string;
  deviation: DeviationData;
  /** The readings that led to it, and those that show control again. */
  readings: ReadingData[];
};
