import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from './instant';
import { tooMany, type SeriesFault } from './too-many';

/** In the column of hundredths: no number was read. It cannot be true, so it is left out and counted as such. */
export const NO_NUMBER = -0x8000_0000;

/** A long series of one probe without an object per reading: 12 bytes each. `at` in epoch ms. */
export type CurveColumns = {
  at: Float64Array;
  hundredths: Int32Array;
  unit: TemperatureUnit;
  probe?: string;
};

/** Readings of one probe in columns; a fault when there are more than can be judged, or their unit changes. */
export function columnsOf(readings: readonly CurveReading[], unit: TemperatureUnit, probe?: string): CurveColumns | SeriesFault {
  const fault = tooMany(readings.length);
  if (fault) return fault;
  const columns = { at: new Float64Array(readings.length), hundredths: new Int32Array(readings.length), unit, probe };
  readings.forEach((reading, index) => {
    columns.at[index] = reading?.at ?? NaN;
    const hundredths = reading?.temperature?.unit === unit ? reading.temperature.hundredths : NaN;
    columns.hundredths[index] = hundredths === (hundredths | 0) ? hundredths : NO_NUMBER;
  });
  return columns;
}

/** One reading out of the columns. */
export const readingAt = ({ at, hundredths, unit, probe }: CurveColumns, index: number): CurveReading => ({
  at: at[index] ?? NaN,
  temperature: { hundredths: hundredths[index] ?? NO_NUMBER, unit },
  probe,
});

export const readingsOf = (columns: CurveColumns): CurveReading[] => Array.from(columns.at, (_, index) => readingAt(columns, index));
