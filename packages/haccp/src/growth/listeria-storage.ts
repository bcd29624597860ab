import type { Why } from '../calculators/cannot';
import { plainly } from '../calculators/figures';
import type { Source } from '../limits/source';
import { factorsOf, type ListeriaProduct } from './listeria-product';
import { outOfRange, type OutOfRange } from './listeria-range';
import { listeriaRate, type ListeriaRate } from './listeria-rate';
import { asGiven } from '../quantity/quantities';

export type Storage = { celsius: number; hours: number };

export type ListeriaGrowth =
  | {
      kind: 'estimate';
      readonly is: 'model estimate';
      readonly model: typeof LISTERIA_MODEL;
      readonly version: '1';
      readonly source: Source;
      /** Over all storage, from the first hour: no lag is credited. */
      readonly log10: number;
      readonly rates: readonly (ListeriaRate & Storage)[];
      readonly claim: typeof LISTERIA_CLAIM;
    }
  | { kind: 'undetermined'; variable: OutOfRange['variable'] | 'hours'; why: Why };

export const LISTERIA_MODEL = 'L. monocytogenes: rate and growth boundary of Mejlholm and Dalgaard 2009, no lag';

export const LISTERIA_CLAIM = 'listeria-claim';

/** 1014 growth responses, six models compared; this one with nine factors did best. */
const source: Source = {
  citation:
    'Mejlholm and Dalgaard, J Food Prot 72:2132-2143 (2009), validated in Int J Food Microbiol 141:137-150 (2010); ' +
    'parameters from two public copies that agree, growth boundary from one of them; the papers’ tables were not read',
  edition: '2009',
  confirmed: false,
};

/** By interval, without lag. Undetermined, naming the variable, outside the range of the equations. */
export function listeriaGrowth(product: ListeriaProduct, storage: readonly Storage[]): ListeriaGrowth {
  const rates: (ListeriaRate & Storage)[] = [];
  for (const { celsius, hours } of storage) {
    const factors = factorsOf(product, celsius);
    const outside = outOfRange(factors);
    if (outside) return { kind: 'undetermined', variable: outside.variable, why: whyOutside(outside) };
    if (!(hours >= 0 && hours < Infinity)) return noHours({ code: 'no-length-of-storage', figures: { hours: asGiven(hours, 'h') } });
    rates.push({ ...listeriaRate(factors), celsius, hours });
  }
  if (rates.length === 0) return noHours({ code: 'no-storage' });
  const log10 = rates.reduce((sum, { perHour, hours }) => sum + (perHour * hours) / Math.LN10, 0);
  const figure = { is: 'model estimate', model: LISTERIA_MODEL, version: '1', source, claim: LISTERIA_CLAIM } as const;
  return { kind: 'estimate', ...figure, log10, rates };
}

/** 1 to 100 CFU/g; Infinity where nothing grows. */
export const daysToHundredfold = ({ perHour }: ListeriaRate): number => (2 * Math.LN10) / perHour / 24;

const noHours = (why: Why): ListeriaGrowth => ({ kind: 'undetermined', variable: 'hours', why });

const whyOutside = ({ variable, value, least, most }: OutOfRange): Why => ({
  code: `outside-${variable}`,
  figures: { value: plainly(value), least: plainly(least), most: plainly(most) },
});
