import { curedObservations } from '../growth/cured-growth';
import { estimateGrowth, type ProbeGrowth } from '../growth/estimate-growth';
import { sayGrowth } from '../growth/growth';
import type { GrowthSet, Species } from '../growth/growth-set';
import type { TellRemark } from '../limits/told';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import type { CannotCalculate, Result, Step, Calculation } from './calculation';

export type GrowthWhileCooling = {
  readings: readonly TypedReading[];
  unit: TemperatureUnit;
  species: Species | 'mixed or unknown';
  cured: boolean;
};

/** What C. perfringens may have done while a cooked product cooled: a screening for a person, never a verdict. */
export function growthWhileCooling(
  { readings, unit, species, cured }: GrowthWhileCooling,
  tell: TellRemark,
): Calculation | CannotCalculate {
  const outcome = estimateGrowth(curveOf(readings, unit), species);
  if (outcome.kind === 'undetermined') return { cannot: `${outcome.because} ${outcome.next}` };
  const { all, highest, notes } = outcome;
  return {
    title: 'Growth of C. perfringens while it cools',
    given: [{ what: 'Meat', said: species }, { what: 'Cured', said: cured ? 'yes' : 'no' }, ...factsOf(readings, unit)],
    steps: all.map(stepOf),
    results: [
      { what: cured ? 'Worst case, as if uncured' : 'Highest estimate', ...resultOf(highest) },
      ...(cured ? curedObservations.map(seen) : []),
    ],
    verdicts: [],
    notes: [
      ...notes.map(tell),
      highest.claim,
      ...highest.unseen.map((where) => `Growth may go on ${where}: the figure is at least.`),
      ...(cured
        ? [
            'No growth model with confirmed parameters is published in the open for cured product. The stages of the ' +
              'cured schedule and the nitrite and erythorbate weighed decide; the uncured figure is an upper bound only.',
          ]
        : []),
    ],
    sources: [...all.map(({ set }) => set.source), ...(cured ? curedObservations.map(({ source }) => source) : [])].filter(onceByCitation),
    cautions: [cautions.model],
  };
}

export const GROWTH_RULE = 'R = sum of b²(T − Tmin)²(1 − e^(c(T − Tmax))) × time; with lag lg((1 + q0·10^R) ÷ (1 + q0))';

/** The figures of a set, as they go into the rule. */
export const growthLaw = ({ b, minCelsius, c, maxCelsius, q0 }: GrowthSet): string =>
  `b ${b}, Tmin ${minCelsius} °C, c ${c}, Tmax ${maxCelsius} °C, q0 ${q0}`;

const stepOf = (growth: ProbeGrowth): Step => ({
  what: growth.set.name,
  rule: GROWTH_RULE,
  putIn: `${growthLaw(growth.set)}; R ${growth.byStraightLines.noLag.toFixed(2)} log`,
  gives: sayGrowth(growth),
});

const resultOf = (growth: ProbeGrowth): Omit<Result, 'what'> => ({
  said: sayGrowth(growth),
  value: growth.byStraightLines.withLag,
  unit: 'log10, model estimate',
});

const seen = ({ nitritePpm, erythorbatePpm, cooling, seen: found }: (typeof curedObservations)[number]): Result => ({
  what: `Ham with ${nitritePpm} ppm nitrite and ${erythorbatePpm} ppm erythorbate, ${cooling}`,
  said: found,
});

const onceByCitation = ({ citation }: { citation: string }, index: number, all: { citation: string }[]): boolean =>
  all.findIndex((other) => other.citation === citation) === index;
