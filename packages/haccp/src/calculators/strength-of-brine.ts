import { brineStrength } from '../formula/brine';
import { isFault } from '../formula/fault';
import type { EnteredMass } from '../quantity/mass';
import { massOf, sayMass } from '../quantity/weigh';
import { numberOf, sayRatio } from './published-figure';
import { arithmetic, type CannotCalculate, type Calculation } from './calculation';

/** Strength of a brine in percent by weight, from the salt and the water weighed. */
export function strengthOfBrine({ salt, water }: { salt: EnteredMass; water: EnteredMass }): Calculation | CannotCalculate {
  const strength = brineStrength(massOf(salt), massOf(water));
  if (isFault(strength)) return { cannot: strength.fault };
  const said = sayRatio(strength, '%');
  return {
    title: 'Strength of a brine',
    given: [
      { what: 'Salt', said: `${salt.value} ${salt.unit}` },
      { what: 'Water', said: `${water.value} ${water.unit}` },
    ],
    steps: [
      {
        what: 'Strength',
        rule: '100 × salt ÷ (salt + water)',
        putIn: `100 × ${sayMass(massOf(salt), 'g')} ÷ ${sayMass(massOf(salt) + massOf(water), 'g')}`,
        gives: said,
      },
    ],
    results: [{ what: 'Strength by weight', said, value: numberOf(strength), unit: '%' }],
    verdicts: [],
    notes: [
      'By weight of the whole brine. Salt on the water alone would be a larger figure.',
      'A salometer reads percent of saturation, which is another figure again.',
    ],
    sources: [arithmetic],
    cautions: [],
  };
}
