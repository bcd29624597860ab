import type { Ratio } from '../formula/curing-species';
import { ingoingPpm, substanceForPickle, substanceIn } from '../formula/ingoing';
import { erythorbatePumped, nitratePumped, nitritePumped } from '../limit-sets/curing';
import { coded, wordFor } from '../limits/coded';
import { sum } from '../limits/line-part';
import { divide } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import { partsPerMillion } from '../quantity/percent';
import { massOf } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, percent, typed } from './figures';
import { figureOfIngoing, ingoingOf, judgedBefore } from './published-figure';
import { asGiven } from '../quantity/quantities';

const limits = {
  'sodium nitrite': nitritePumped,
  'sodium nitrate': nitratePumped,
  'sodium erythorbate': erythorbatePumped,
} as const;

export type CureForPickle = {
  substance: keyof typeof limits;
  /** Cure included. */
  pickle: EnteredMass;
  /** Percent of the green weight, pumped in or picked up by immersion. */
  pump: number;
  /** Ingoing parts per million aimed at, a whole number. */
  ppm: number;
  /** Percent of the substance in what is weighed: 6.25 in a curing salt, 100 in pure erythorbate. */
  strength: number;
};

export function cureForPickle({ substance, pickle, pump, ppm, strength }: CureForPickle): Calculation | CannotCalculate {
  const whole = massOf(pickle);
  const parts = partsPerMillion(strength);
  const [pumped, content, aimed] = [percent(pump), percent(strength), asGiven(ppm, 'ppm')];
  if (!parts) return cannot('content-unusable', { content });
  const pure = substanceForPickle(ppm, whole, pump);
  if (typeof pure !== 'bigint') return atFault(pure);
  const salt = divide(pure * 1_000_000n, BigInt(parts), 'down');
  if (salt > whole) {
    return cannot('too-much-for-the-pickle', { aimed, pumped, salt: grams(salt), pickle: grams(whole) });
  }
  // The pickle and the pump were checked above: no fault here.
  const held = substanceIn(salt, strength) as bigint;
  const ingoing = ingoingPpm({ method: 'pumped', substance: held, pickle: whole, pumpPercent: pump }) as Ratio;
  const [pureGrams, weigh] = [grams(pure, 4, 'down'), grams(salt, 3, 'down')];
  return {
    given: [
      { what: coded('pickle'), is: typed(pickle) },
      { what: coded('pumped-or-picked-up'), is: coded('of-green-weight', { percent: pumped }) },
      { what: coded('aimed-at'), is: coded('so-much-of', { amount: aimed, substance: wordFor('substance', substance) }) },
      { what: coded('content-of-weighed'), is: content },
    ],
    steps: [
      {
        what: coded('substance'),
        rule: coded('substance-for-pickle.rule'),
        putIn: sum`${ppm} × ${grams(whole)} ÷ ${pumped} ÷ ${1_000_000}`,
        gives: pureGrams,
      },
      { what: coded('weigh-into-pickle'), rule: coded('substance-by-content'), putIn: sum`${pureGrams} ÷ ${content}`, gives: weigh },
    ],
    results: [
      { what: coded('weigh-into-pickle'), is: weigh, value: Number(divide(salt, 10n ** 12n, 'down')) / 1000, unit: 'g' },
      { what: coded('ingoing-at-this-pump'), is: ingoingOf(ingoing) },
    ],
    judged: [judgedBefore(ingoing, figureOfIngoing(limits[substance]), 'aim-at-less')],
    notes: [coded('pickle-general-limit'), coded('pickle-is-everything'), coded('pickle-until-even')],
    sources: [limits[substance].source],
    grounds: [],
    cautions: [cautions.curing, cautions.limits],
  };
}
