import { replacedByCitric } from '../formula/accelerators';
import { isFault } from '../formula/fault';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, typed } from './figures';
import { ratioOf, judgedBefore, numberOf, publishedFigure } from './published-figure';

export type CitricForAccelerator = { accelerator: EnteredMass; citric: EnteredMass };

export function citricForAccelerator({ accelerator, citric }: CitricForAccelerator): Calculation | CannotCalculate {
  const [own, instead] = [massOf(accelerator), massOf(citric)];
  const share = replacedByCitric({ ascorbateOrErythorbate: own, citric: instead });
  if (isFault(share)) return atFault(share, 'weigh-both');
  const limit = publishedFigure('citric');
  const is = ratioOf(share, '%');
  return {
    given: [
      { what: coded('accelerator'), is: typed(accelerator) },
      { what: coded('citric'), is: typed(citric) },
    ],
    steps: [
      { what: coded('replaced'), rule: coded('replaced.rule'), putIn: sum`100 × ${grams(instead)} ÷ ${grams(own + instead)}`, gives: is },
    ],
    results: [{ what: coded('replaced'), is, value: numberOf(share), unit: '%' }],
    judged: [judgedBefore(share, limit, 'replace-less')],
    notes: [coded('accelerators-with-cure'), coded('replaced-comes-off')],
    sources: [limit.source],
    grounds: [],
    cautions: [cautions.limits],
  };
}
