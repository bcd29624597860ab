import { curedObservations, hamOf, type CuredObservation } from '../growth/cured-growth';
import { estimateGrowth, type ProbeGrowth } from '../growth/estimate-growth';
import { growthFound } from '../growth/growth-found';
import type { GrowthSet, Species } from '../growth/growth-set';
import { coded, wordFor } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation, Result, Step } from './calculation';
import type { CannotCalculate, Why } from './cannot';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';

export type GrowthWhileCooling = {
  readings: readonly TypedReading[];
  unit: TemperatureUnit;
  species: Species | 'mixed or unknown';
  cured: boolean;
};

/** A screening for a person, never a verdict. */
export function growthWhileCooling({ readings, unit, species, cured }: GrowthWhileCooling): Calculation | CannotCalculate {
  const outcome = estimateGrowth(curveOf(readings, unit), species);
  if (outcome.kind === 'undetermined') return { cannot: [outcome.because, outcome.next] as Why[] };
  const { all, highest, notes } = outcome;
  return {
    given: [
      { what: coded('meat'), is: wordFor('species', species) },
      { what: coded('cured'), is: coded(cured ? 'yes' : 'no') },
      ...factsOf(readings, unit),
    ],
    steps: all.map(stepOf),
    results: [
      { what: coded(cured ? 'worst-case-uncured' : 'highest-estimate'), ...resultOf(highest) },
      ...(cured ? curedObservations.map(seenInHam) : []),
    ],
    judged: [],
    notes: [
      ...notes,
      coded(highest.claim),
      ...highest.unseen.map((where) => wordFor('growth-goes-on', where)),
      ...(cured ? [coded('no-open-model-for-cured')] : []),
    ],
    sources: [...all.map(({ set }) => set.source), ...(cured ? curedObservations.map(({ source }) => source) : [])].filter(onceByCitation),
    grounds: [],
    cautions: [cautions.model],
  };
}

export const lawOfGrowth = ({ b, minCelsius, c, maxCelsius, q0 }: GrowthSet) =>
  sum`b ${b}, Tmin ${minCelsius} °C, c ${c}, Tmax ${maxCelsius} °C, q0 ${q0}`;

const stepOf = (growth: ProbeGrowth): Step => ({
  what: wordFor('growth-set', growth.set.species),
  rule: coded('growth.rule'),
  putIn: { sum: [...lawOfGrowth(growth.set).sum, `; R `, { value: growth.byStraightLines.noLag.toFixed(2), unit: 'log10' }] },
  gives: growthFound(growth),
});

const resultOf = (growth: ProbeGrowth): Omit<Result, 'what'> => ({
  is: growthFound(growth),
  value: growth.byStraightLines.withLag,
  unit: 'log10',
});

const seenInHam = (observation: CuredObservation): Result => ({ what: hamOf(observation), is: observation.seen });

const onceByCitation = ({ citation }: { citation: string }, index: number, all: { citation: string }[]): boolean =>
  all.findIndex((other) => other.citation === citation) === index;
