import type { ListeriaFactors } from './listeria-product';

type Range = { least: number; most: number; says: string };

/**
 * Where the equations speak: between the figures at which each factor becomes 0 and those it is scaled by. The range of
 * the experiments behind them was not found in the open, so nothing narrower is claimed; pH above 4.97 has no upper end
 * in them.
 */
export const LISTERIA_RANGE: Readonly<Record<keyof ListeriaFactors, Range>> = {
  celsius: { least: -2.83, most: 25, says: 'the temperature (°C)' },
  waterActivity: { least: 0.923, most: 1, says: 'the water activity, worked out from the water-phase salt' },
  pH: { least: 4.97, most: 14, says: 'the pH' },
  phenolsPpm: { least: 0, most: 32, says: 'the smoke phenols (ppm)' },
  nitritePpm: { least: 0, most: 350, says: 'the nitrite (ppm)' },
  carbonDioxidePpm: { least: 0, most: 3140, says: 'the dissolved carbon dioxide (ppm)' },
  lactic: { least: 0, most: 3.79, says: 'the undissociated lactic acid (mM)' },
  acetic: { least: 0, most: 10.3, says: 'the undissociated acetic acid (mM)' },
  diacetate: { least: 0, most: 4.8, says: 'the undissociated diacetate (mM)' },
};

export type OutOfRange = { variable: keyof ListeriaFactors; because: string };

/** The first figure that lies outside, or is no number; undefined when the model may be asked. */
export function outOfRange(factors: ListeriaFactors): OutOfRange | undefined {
  const variables = Object.keys(LISTERIA_RANGE) as (keyof ListeriaFactors)[];
  const isInside = (value: number, { least, most }: Range) => value >= least && value <= most;
  const variable = variables.find((name) => !isInside(factors[name], LISTERIA_RANGE[name]));
  if (!variable) return undefined;
  const { least, most, says } = LISTERIA_RANGE[variable];
  const value = Number(factors[variable].toPrecision(4));
  return { variable, because: `The model says nothing where ${says} is ${value}: it goes from ${least} to ${most}.` };
}
