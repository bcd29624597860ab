import { plainUnits, temperatureUnits } from '@larderbook/contracts';

const units = [...temperatureUnits, ...plainUnits];
export type ReadingUnit = (typeof units)[number];

/** The unit on the keypad as the contract knows it. */
export function readingUnit(unit: string): ReadingUnit {
  const known = units.find((each) => each === unit);
  if (!known) throw new RangeError(`${unit} is not a unit of a reading`);
  return known;
}

export const isDegrees = (unit: string): unit is '°F' | '°C' => unit === '°F' || unit === '°C';

const measured: Record<ReadingUnit, string> = {
  '°C': 'Temperature',
  '°F': 'Temperature',
  pH: 'pH',
  aw: 'Water activity',
  '%': 'Percent',
};

/** What a unit is a measurement of, as the keypad's label. */
export const measuredIn = (unit: string): string => measured[readingUnit(unit)];
