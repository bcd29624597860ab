import { massUnits, readingUnits, type ReadingUnit } from '@larderbook/contracts';

/** The unit on the keypad as the contract knows it. */
export function readingUnit(unit: string): ReadingUnit {
  const known = readingUnits.find((each) => each === unit);
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
  ratio: 'Ratio',
  ppm: 'Parts per million',
  log10: 'Logs',
  'cfu/g': 'Germs per gram',
  min: 'Minutes',
  h: 'Hours',
  days: 'Days',
  mm: 'Millimetres',
  g: 'Weight',
  kg: 'Weight',
  oz: 'Weight',
  lb: 'Weight',
};

/** What a unit is a measurement of, as the keypad's label. */
export const measuredIn = (unit: string): string => measured[readingUnit(unit)];

const masses: readonly string[] = massUnits;

/** What a number in this unit is read with. */
export const instrumentFor = (unit: string): 'thermometer' | 'scale' | 'pH meter' | 'other' => {
  if (isDegrees(unit)) return 'thermometer';
  if (masses.includes(unit)) return 'scale';
  return unit === 'pH' ? 'pH meter' : 'other';
};
