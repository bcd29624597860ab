import { massUnits, readingUnits, type ReadingUnit } from '@larderbook/contracts';

export function readingUnit(unit: string): ReadingUnit {
  const known = readingUnits.find((each) => each === unit);
  if (!known) throw new RangeError(`${unit} is not a unit of a reading`);
  return known;
}

export const isDegrees = (unit: string): unit is '°F' | '°C' => unit === '°F' || unit === '°C';

const measured = {
  '°C': 'temperature',
  '°F': 'temperature',
  pH: 'ph',
  aw: 'aw',
  '%': 'percent',
  ratio: 'ratio',
  ppm: 'ppm',
  log10: 'log10',
  'cfu/g': 'germs',
  min: 'minutes',
  h: 'hours',
  days: 'days',
  mm: 'millimetres',
  g: 'weight',
  kg: 'weight',
  oz: 'weight',
  lb: 'weight',
} as const satisfies Record<ReadingUnit, string>;

export const measuredIn = (unit: string) => measured[readingUnit(unit)];

const masses: readonly string[] = massUnits;

export const instrumentFor = (unit: string): 'thermometer' | 'scale' | 'pH meter' | 'other' => {
  if (isDegrees(unit)) return 'thermometer';
  if (masses.includes(unit)) return 'scale';
  return unit === 'pH' ? 'pH meter' : 'other';
};
