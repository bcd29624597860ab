import type { DeviationData, ReadingData } from '../entry-data';
import { subheading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { readingGrid } from './reading-grid';
import { readingTable } from './reading-table';

/** Fewer readings are easier to read line by line. */
const aCurve = 5;

export function readingList(sheet: Sheet, readings: ReadingData[], deviations: DeviationData[]): void {
  const isCurve = readings.length >= aCurve && readings.every(({ verdict, unit }) => !verdict && unit);
  sheet.hold(subheading(sheet.pen, sheet.area, sheet.say('readings')));
  if (isCurve) readingGrid(sheet, readings);
  else readingTable(sheet, readings, deviations);
}
