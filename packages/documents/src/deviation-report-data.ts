import type { DeviationData, ReadingData } from './entry-data';
import type { SheetData } from './sheet-data';

/** 9 CFR 417.3 asks for these parts. */
export type DeviationReportData = {
  sheet: SheetData;
  lot: { kind?: 'lot' | 'delivery'; code: string; product: string };
  hazard: string;
  preparedAction?: string;
  deviation: DeviationData;
  /** The readings that led to it, and those that show control again. */
  readings: ReadingData[];
};
