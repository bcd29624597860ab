import { formulaPercentOf, weightOf } from '../formula/percent-of';
import type { EnteredMass } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { massOf, sayMass } from '../quantity/weigh';
import { arithmetic, type CannotCalculate, type Step, type Calculation } from './calculation';

/** What the percentage is of, and either the percentage or the weight. */
export type PercentAndWeight = { base: EnteredMass; percent?: number; weight?: EnteredMass };

/** From percent to weight or from weight to percent, on the meat block or on anything else. */
export function percentAndWeight({ base, percent, weight }: PercentAndWeight): Calculation | CannotCalculate {
  if ((percent === undefined) === (weight === undefined)) return { cannot: 'Give either the percentage or the weight, one of them.' };
  const worked = weight ? toPercent(base, weight) : toWeight(base, percent as number);
  if ('cannot' in worked) return worked;
  const { step, value, unit } = worked;
  return {
    title: 'Percent and weight',
    given: [
      { what: 'Counted on', said: `${base.value} ${base.unit}` },
      weight ? { what: 'Weight', said: `${weight.value} ${weight.unit}` } : { what: 'Percentage', said: sayPercent(percent as number) },
    ],
    steps: [step],
    results: [{ what: step.what, said: step.gives, value, unit }],
    verdicts: [],
    notes: ['A formula counts on the meat block, which is 100 %: all its lines together are more than that.'],
    sources: [arithmetic],
    cautions: [],
  };
}

type OneWay = { step: Step; value: number; unit: string };

function toWeight(base: EnteredMass, percent: number): OneWay | CannotCalculate {
  const mass = weightOf(percent, massOf(base));
  if (typeof mass !== 'bigint') return { cannot: mass.fault };
  const gives = sayMass(mass, 'g');
  const putIn = `${sayMass(massOf(base), 'g')} × ${sayPercent(percent)}`;
  return { step: { what: 'Weight', rule: 'base × percent', putIn, gives }, value: Number(gives.split(' ')[0]), unit: 'g' };
}

function toPercent(base: EnteredMass, weight: EnteredMass): OneWay | CannotCalculate {
  const percent = formulaPercentOf(massOf(weight), massOf(base));
  if (typeof percent !== 'number') return { cannot: percent.fault };
  const putIn = `100 × ${sayMass(massOf(weight), 'g')} ÷ ${sayMass(massOf(base), 'g')}`;
  const step = { what: 'Percentage', rule: '100 × weight ÷ base, to four decimals', putIn, gives: sayPercent(percent) };
  return { step, value: percent, unit: '%' };
}
