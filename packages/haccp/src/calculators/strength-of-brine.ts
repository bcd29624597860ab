import { brineStrength } from '../formula/brine';
import { isFault } from '../formula/fault';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, type CannotCalculate } from './cannot';
import { grams, typed } from './figures';
import { ratioOf, numberOf } from './published-figure';

export function strengthOfBrine({ salt, water }: { salt: EnteredMass; water: EnteredMass }): Calculation | CannotCalculate {
  const strength = brineStrength(massOf(salt), massOf(water));
  if (isFault(strength)) return atFault(strength);
  const is = ratioOf(strength, '%');
  return {
    given: [
      { what: coded('salt'), is: typed(salt) },
      { what: coded('water'), is: typed(water) },
    ],
    steps: [
      {
        what: coded('strength'),
        rule: coded('strength.rule'),
        putIn: sum`100 × ${grams(massOf(salt))} ÷ ${grams(massOf(salt) + massOf(water))}`,
        gives: is,
      },
    ],
    results: [{ what: coded('strength-by-weight'), is, value: numberOf(strength), unit: '%' }],
    judged: [],
    notes: [coded('brine-by-weight'), coded('salometer')],
    sources: [],
    grounds: [coded('arithmetic')],
    cautions: [],
  };
}
