import type { Ratio } from '../formula/curing-species';
import { ingoingPpm, sayIngoing, substanceForPickle, substanceIn } from '../formula/ingoing';
import { erythorbatePumped, nitratePumped, nitritePumped } from '../limit-sets/curing';
import { divide } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import { partsPerMillion, sayPercent } from '../quantity/percent';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import { figureOfIngoing, judgedBefore } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

const limits = {
  'sodium nitrite': nitritePumped,
  'sodium nitrate': nitratePumped,
  'sodium erythorbate': erythorbatePumped,
} as const;

export type CureForPickle = {
  substance: keyof typeof limits;
  /** Everything the pickle weighs, the cure included. */
  pickle: EnteredMass;
  /** Pickle pumped in, or picked up by immersion, in percent of the green weight. */
  pump: number;
  /** Ingoing parts per million aimed at, a whole number. */
  ppm: number;
  /** Percent of the substance in what is weighed: 6.25 in a curing salt, 100 in pure erythorbate. */
  strength: number;
};

/** How much of a curing salt or accelerator goes into a pickle, rounded down, and what that makes of the limit. */
export function cureForPickle({ substance, pickle, pump, ppm, strength }: CureForPickle): Calculation | CannotCalculate {
  const whole = massOf(pickle);
  const parts = partsPerMillion(strength);
  if (!parts) return { cannot: `A content of ${strength} % cannot be used: give a percentage above 0, at most 100.` };
  const pure = substanceForPickle(ppm, whole, pump);
  if (typeof pure !== 'bigint') return { cannot: pure.fault };
  const salt = divide(pure * 1_000_000n, BigInt(parts), 'down');
  if (salt > whole) {
    return {
      cannot: `${ppm} ppm at ${sayPercent(pump)} would take ${sayMass(salt, 'g')} in ${sayMass(whole, 'g')} of pickle: pump more, or take a stronger salt.`,
    };
  }
  // The pickle and the pump have been used once already: they cannot be at fault.
  const held = substanceIn(salt, strength) as bigint;
  const ingoing = ingoingPpm({ method: 'pumped', substance: held, pickle: whole, pumpPercent: pump }) as Ratio;
  const grams = sayMass(salt, 'g', 3, 'down');
  return {
    title: 'Cure for a pickle',
    given: [
      { what: 'Pickle', said: `${pickle.value} ${pickle.unit}` },
      { what: 'Pumped in or picked up', said: `${sayPercent(pump)} of the green weight` },
      { what: 'Aimed at', said: `${ppm} ppm ${substance}` },
      { what: 'Content of what is weighed', said: sayPercent(strength) },
    ],
    steps: [
      {
        what: 'Substance',
        rule: 'ppm × pickle ÷ pump % ÷ 1,000,000',
        putIn: `${ppm} × ${sayMass(whole, 'g')} ÷ ${sayPercent(pump)} ÷ 1,000,000`,
        gives: sayMass(pure, 'g', 4, 'down'),
      },
      {
        what: 'To weigh into the pickle',
        rule: 'substance ÷ content',
        putIn: `${sayMass(pure, 'g', 4, 'down')} ÷ ${sayPercent(strength)}`,
        gives: grams,
      },
    ],
    results: [
      { what: 'To weigh into the pickle', said: grams, value: Number(divide(salt, 10n ** 12n, 'down')) / 1000, unit: 'g' },
      { what: 'Ingoing at this pump', said: sayIngoing(ingoing) },
    ],
    verdicts: [judgedBefore(ingoing, figureOfIngoing(limits[substance]), 'Aim at less, or pump less, before the pickle is made.')],
    notes: [
      'The limit judged is the general one for pumped, massaged and immersed meat. Bacon has its own, lower ones.',
      'The pickle is everything in it: water, salt, sugar and the cure. A pump above the one planned raises the ppm alike.',
      'Cured by immersion until even, the meat and the pickle count together: see “Ingoing amount by method”.',
    ],
    sources: [limits[substance].source],
    cautions: [cautions.curing, cautions.limits],
  };
}
