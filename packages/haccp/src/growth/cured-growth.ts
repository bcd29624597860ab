import { coded } from '../limits/coded';
import type { Source } from '../limits/source';
import type { Coded, Phrase } from '../limits/verdict';
import type { CurveReading } from '../thermal/curve';
import type { CoolingContext } from '../kinds/cooling/stage-span';
import type { GrowthOptions } from './add-up-growth';
import { estimateGrowth, type GrowthOutcome } from './estimate-growth';
import type { Species } from './growth-set';
import { asGiven } from '../quantity/quantities';

/** C. perfringens in ham with a known cure, cooled slowly. */
export type CuredObservation = {
  /** Ingoing, mg/kg of meat. */
  nitritePpm: number;
  erythorbatePpm: number;
  cooling: Phrase;
  seen: Coded;
  source: Source;
};

/**
 * No model with confirmed parameters is public: cured product has no figure, and the uncured figure is never scaled by
 * an invented effect of the cure.
 */
export type CuredGrowth = {
  kind: 'no model';
  published: readonly CuredObservation[];
  /** Only an upper bound: real growth under cure is far less. */
  worstCase: { as: 'worst case, as if uncured'; growth: GrowthOutcome };
};

const osterbauer: Source = {
  citation: 'Osterbauer et al., J Food Prot 80:1697-1704; abstract',
  edition: '2017',
  confirmed: true,
};
/** Probably the same work, told earlier. */
const groundHam: Source = {
  citation: 'Ground ham, conference abstract 9451, IAFP',
  edition: '2015',
  confirmed: false,
};
const hamWith = (nitritePpm: number, cooling: Phrase, seen: Coded, from: Source): CuredObservation => ({
  nitritePpm,
  erythorbatePpm: 547,
  cooling,
  seen,
  source: from,
});

const inAnyOfNine: Phrase = { code: 'cooled-in-any-of-nine' };
const tenAndFifteen: Phrase = { code: 'cooled-in-ten-and-fifteen' };
const logs = (value: string) => ({ value, unit: 'log10' }) as const;

export const curedObservations: readonly CuredObservation[] = [
  hamWith(200, inAnyOfNine, coded('seen-no-growth'), osterbauer),
  ...[200, 150, 100].map((ppm) => hamWith(ppm, tenAndFifteen, coded('seen-below-one-log'), groundHam)),
  hamWith(75, tenAndFifteen, coded('seen-early', { logs: logs('1.9') }), groundHam),
  hamWith(50, tenAndFifteen, coded('seen-early', { logs: logs('4.4') }), groundHam),
  hamWith(50, tenAndFifteen, coded('seen-logs', { logs: logs('3.59') }), osterbauer),
];

export const hamOf = ({ nitritePpm, erythorbatePpm, cooling }: CuredObservation): Coded =>
  coded('ham-with', { nitrite: ppm(nitritePpm), erythorbate: ppm(erythorbatePpm), cooling });

const ppm = (value: number) => asGiven(value, 'ppm');

/** For a deviation; a person decides. */
export function growthUnderCure(
  readings: readonly CurveReading[],
  species: Species | 'mixed or unknown',
  { startAt }: Pick<CoolingContext, 'startAt'>,
  options: GrowthOptions = {},
): CuredGrowth {
  const growth = estimateGrowth(readings, species, { cookingEnded: startAt, ...options });
  return {
    kind: 'no model',
    published: curedObservations,
    worstCase: { as: 'worst case, as if uncured', growth },
  };
}
