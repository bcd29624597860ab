import type { Source } from '../limits/source';
import { factorsOf, type ListeriaProduct } from './listeria-product';
import { outOfRange, type OutOfRange } from './listeria-range';
import { listeriaRate, type ListeriaRate } from './listeria-rate';

/** So many hours at one temperature (°C). */
export type Storage = { celsius: number; hours: number };

export type ListeriaGrowth =
  | {
      kind: 'estimate';
      readonly is: 'model estimate';
      readonly model: typeof LISTERIA_MODEL;
      readonly version: '1';
      readonly source: Source;
      /** log10 over all the storage, from the first hour on: no lag is credited. */
      readonly log10: number;
      /** Per interval, in order. */
      readonly rates: readonly (ListeriaRate & Storage)[];
      readonly claim: typeof LISTERIA_CLAIM;
    }
  | { kind: 'undetermined'; variable: OutOfRange['variable'] | 'hours'; because: string };

export const LISTERIA_MODEL = 'L. monocytogenes: rate and growth boundary of Mejlholm and Dalgaard 2009, no lag';

export const LISTERIA_CLAIM =
  'Rate within a factor of 1.5, from memory. Phenols and acids are measured or on the supplier’s sheet, else none. ' +
  'Other flora, which ends the growth earlier, is not counted. No substitute for a challenge test, and no shelf life ' +
  'follows from it.';

/** 1014 growth responses, six models compared; this one with nine factors did best. */
const source: Source = {
  citation:
    'Mejlholm and Dalgaard, J Food Prot 72:2132-2143 (2009), validated in Int J Food Microbiol 141:137-150 (2010); ' +
    'parameters from two public copies that agree, growth boundary from one of them; the papers’ tables were not read',
  edition: '2009',
  confirmed: false,
};

/**
 * log10 growth of L. monocytogenes in a chilled pack through its storage, interval by interval, the lag taken as zero.
 * Undetermined, and naming the variable, where any figure lies outside what the equations cover.
 */
export function listeriaGrowth(product: ListeriaProduct, storage: readonly Storage[]): ListeriaGrowth {
  const rates: (ListeriaRate & Storage)[] = [];
  for (const { celsius, hours } of storage) {
    const factors = factorsOf(product, celsius);
    const outside = outOfRange(factors);
    if (outside) return { kind: 'undetermined', ...outside };
    if (!(hours >= 0 && hours < Infinity)) return noHours(`A time of ${hours} h is no length of storage.`);
    rates.push({ ...listeriaRate(factors), celsius, hours });
  }
  if (rates.length === 0) return noHours('No storage is given.');
  const log10 = rates.reduce((sum, { perHour, hours }) => sum + (perHour * hours) / Math.LN10, 0);
  const figure = { is: 'model estimate', model: LISTERIA_MODEL, version: '1', source, claim: LISTERIA_CLAIM } as const;
  return { kind: 'estimate', ...figure, log10, rates };
}

/** Days to a hundredfold (1 to 100 CFU/g) at a rate; Infinity where nothing grows. */
export const daysToHundredfold = ({ perHour }: ListeriaRate): number => (2 * Math.LN10) / perHour / 24;

const noHours = (because: string): ListeriaGrowth => ({ kind: 'undetermined', variable: 'hours', because });
