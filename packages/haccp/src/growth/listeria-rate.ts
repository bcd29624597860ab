import type { ListeriaFactors } from './listeria-product';

export type ListeriaRate = {
  /** Natural log. */
  perHour: number;
  /** Distance to the growth boundary: up to 0.5 the factors act alone, from 1 on nothing grows. */
  psi: number;
};

type Shares = {
  /** Share of the best rate per factor, 0 to 1. */
  single: number[];
  /** Acids together; at the boundary lactic acid weighs more. */
  acid: number;
  acidAtBoundary: number;
};

function sharesOf(factors: ListeriaFactors): Shares {
  const { celsius, waterActivity, pH, phenolsPpm, nitritePpm, carbonDioxidePpm } = factors;
  const lactic = factors.lactic / 3.79;
  const others = (1 - Math.sqrt(factors.diacetate / 4.8)) * (1 - Math.sqrt(factors.acetic / 10.3));
  const single = [
    ((celsius + 2.83) / (25 + 2.83)) ** 2,
    (waterActivity - 0.923) / (1 - 0.923),
    1 - 10 ** (4.97 - pH),
    (32 - phenolsPpm) / 32,
    ((350 - nitritePpm) / 350) ** 2,
    (3140 - carbonDioxidePpm) / 3140,
  ];
  return { single, acid: (1 - lactic) * others, acidAtBoundary: (1 - Math.sqrt(lactic)) * others };
}

/** Near their end factors lean on the others more; one at its end stops growth alone. */
function psiOf(lean: readonly number[]): number {
  if (lean.some((phi) => phi >= 1)) return Infinity;
  const free = lean.reduce((product, phi) => product * (1 - phi), 1);
  return lean.reduce((sum, phi) => sum + (phi * (1 - phi)) / (2 * free), 0);
}

function interaction(psi: number): number {
  if (psi <= 0.5) return 1;
  return psi < 1 ? 2 * (1 - psi) : 0;
}

/** Mejlholm and Dalgaard 2009. Only within `LISTERIA_RANGE`. */
export function listeriaRate(factors: ListeriaFactors): ListeriaRate {
  const { single, acid, acidAtBoundary } = sharesOf(factors);
  const psi = psiOf([...single.map((share) => (1 - Math.sqrt(share)) ** 2), (1 - acidAtBoundary) ** 2]);
  return { perHour: single.reduce((product, share) => product * share, 0.419 * acid) * interaction(psi), psi };
}
