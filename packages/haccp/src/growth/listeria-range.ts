import type { ListeriaFactors } from './listeria-product';

type Range = { least: number; most: number };

/**
 * From where each factor becomes 0 to the figure it is scaled by. The range of the experiments was not found in the
 * open, so nothing narrower is claimed; pH above 4.97 has no upper end.
 */
export const LISTERIA_RANGE: Readonly<Record<keyof ListeriaFactors, Range>> = {
  celsius: { least: -2.83, most: 25 },
  waterActivity: { least: 0.923, most: 1 },
  pH: { least: 4.97, most: 14 },
  phenolsPpm: { least: 0, most: 32 },
  nitritePpm: { least: 0, most: 350 },
  carbonDioxidePpm: { least: 0, most: 3140 },
  lactic: { least: 0, most: 3.79 },
  acetic: { least: 0, most: 10.3 },
  diacetate: { least: 0, most: 4.8 },
};

export type OutOfRange = { variable: keyof ListeriaFactors; value: number; least: number; most: number };

/** The first figure outside, or NaN. */
export function outOfRange(factors: ListeriaFactors): OutOfRange | undefined {
  const variables = Object.keys(LISTERIA_RANGE) as (keyof ListeriaFactors)[];
  const isInside = (value: number, { least, most }: Range) => value >= least && value <= most;
  const variable = variables.find((name) => !isInside(factors[name], LISTERIA_RANGE[name]));
  if (!variable) return undefined;
  return { variable, value: Number(factors[variable].toPrecision(4)), ...LISTERIA_RANGE[variable] };
}
