import { formulaPercentOf, weightOf } from '../formula/percent-of';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import type { Calculation, Step } from './calculation';
import { atFault, cannot, type CannotCalculate } from './cannot';
import { grams, percent, typed } from './figures';

export type PercentAndWeight = { base: EnteredMass; percent?: number; weight?: EnteredMass };

export function percentAndWeight({ base, percent: share, weight }: PercentAndWeight): Calculation | CannotCalculate {
  if ((share === undefined) === (weight === undefined)) return cannot('percent-or-weight');
  const result = weight ? toPercent(base, weight) : toWeight(base, share as number);
  if ('cannot' in result) return result;
  const { step, value, unit } = result;
  return {
    given: [
      { what: coded('counted-on'), is: typed(base) },
      weight ? { what: coded('weight'), is: typed(weight) } : { what: coded('percentage'), is: percent(share as number) },
    ],
    steps: [step],
    results: [{ what: step.what, is: step.gives, value, unit }],
    judged: [],
    notes: [coded('formula-counts-on-meat')],
    sources: [],
    grounds: [coded('arithmetic')],
    cautions: [],
  };
}

type OneWay = { step: Step; value: number; unit: string };

function toWeight(base: EnteredMass, share: number): OneWay | CannotCalculate {
  const mass = weightOf(share, massOf(base));
  if (typeof mass !== 'bigint') return atFault(mass);
  const gives = grams(mass);
  const putIn = sum`${grams(massOf(base))} × ${percent(share)}`;
  return { step: { what: coded('weight'), rule: coded('base-times-percent'), putIn, gives }, value: Number(gives.value), unit: 'g' };
}

function toPercent(base: EnteredMass, weight: EnteredMass): OneWay | CannotCalculate {
  const share = formulaPercentOf(massOf(weight), massOf(base));
  if (typeof share !== 'number') return atFault(share);
  const putIn = sum`100 × ${grams(massOf(weight))} ÷ ${grams(massOf(base))}`;
  return { step: { what: coded('percentage'), rule: coded('percentage.rule'), putIn, gives: percent(share) }, value: share, unit: '%' };
}
