import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import type { Source } from '../limits/source';
import type { LethalitySet } from './lethality-set';

/** Minutes that kill as much as `minutes` at the reference temperature. */
export const equivalentMinutes = ({ referenceCelsius, zCelsius }: LethalitySet, celsius: number, minutes: number): number =>
  minutes * 10 ** ((referenceCelsius - celsius) / zCelsius);

const rows = (...printed: [celsius: number, seconds: number][]): DwellLimit['rows'] =>
  printed.map(([celsius, seconds]) => ({ at: { '°C': celsius * 100 }, seconds }));

/** A hold is one unbroken stretch; 15 min between readings is common practice, no source. */
const equivalents = (printed: DwellLimit['rows'], source: Source): DwellLimit => ({
  kind: 'dwell',
  rows: printed,
  longestGapSeconds: 15 * 60,
  source,
});

/**
 * Times usually printed beside 70 °C for 2 min in the United Kingdom: the law of z 7.5 °C rounded up. The printed times
 * decide. Their original page was not read, so they are unconfirmed.
 */
export const cooked70For2: DwellLimit = equivalents(rows([60, 45 * 60], [65, 600], [70, 120], [75, 30], [80, 6]), {
  citation: '70 °C for 2 min and its usual equivalents, z 7.5 °C (United Kingdom)',
  edition: 'usual times, original not read',
  confirmed: false,
});

/** z 6 °C. 65 and 75 °C are in the report; 60 °C is the same law rounded up. */
export const burgers70For2: DwellLimit = equivalents(rows([60, 93 * 60], [65, 14 * 60], [70, 120], [75, 18]), {
  citation: 'ACMSF ad hoc group, Report on the safe cooking of burgers; 60 °C worked out by the same law',
  edition: 'March 2007',
  confirmed: false,
});
