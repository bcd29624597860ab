import { pumpPercent } from '../formula/brine';
import { isFault } from '../formula/fault';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf, roundedMass } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { grams, typed } from './figures';
import { ratioOf, numberOf } from './published-figure';

export function pumpByWeight({ green, pumped }: { green: EnteredMass; pumped: EnteredMass }): Calculation | CannotCalculate {
  const [before, after] = [massOf(green), massOf(pumped)];
  const pump = pumpPercent(before, after);
  if (isFault(pump)) return atFault(pump, 'which-weight-is-which');
  const is = ratioOf(pump, '%');
  return {
    given: [
      { what: coded('green-weight'), is: typed(green) },
      { what: coded('pumped-weight'), is: typed(pumped) },
    ],
    steps: [
      {
        what: coded('pump'),
        rule: coded('pump.rule'),
        putIn: sum`100 × (${grams(after)} − ${grams(before)}) ÷ ${grams(before)}`,
        gives: is,
      },
    ],
    results: [
      { what: coded('pump'), is, value: numberOf(pump), unit: '%' },
      { what: coded('pickle-in-meat'), is: roundedMass(after - before, pumped.unit) },
    ],
    judged: [],
    notes: [coded('weigh-after-draining')],
    sources: [],
    grounds: [coded('arithmetic')],
    cautions: [],
  };
}
