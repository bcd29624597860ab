import { ingoingPpm, substanceIn, type Cure } from '../formula/ingoing';
import { isFault } from '../formula/fault';
import { curingRule } from '../limit-sets/sources';
import { coded, wordFor } from '../limits/coded';
import { sum, type Sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import type { Calculation } from './calculation';
import { atFault, cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, percent, typed } from './figures';
import { ingoingOf } from './published-figure';

export type IngoingByMethod = {
  method: Cure['method'];
  /** `strength`: percent of the substance in the salt. */
  salt: EnteredMass;
  strength: number;
  /** By method: meat, the pickle made, or for `per batch` everything in the batch. */
  weight: EnteredMass;
  /** Beside the pickle, for immersion until even. */
  meat?: EnteredMass;
  /** Percent of the green weight, pumped in or picked up. */
  pump?: number;
};

export function ingoingByMethod(asked: IngoingByMethod): Calculation | CannotCalculate {
  const { method, salt, strength, weight } = asked;
  const substance = substanceIn(massOf(salt), strength);
  if (typeof substance !== 'bigint') return atFault(substance);
  const cure = cureOf(asked, substance);
  if ('cannot' in cure) return cure;
  const ppm = ingoingPpm(cure);
  if (isFault(ppm)) return atFault(ppm);
  const is = ingoingOf(ppm);
  return {
    given: [
      { what: coded('method'), is: wordFor('method', method) },
      { what: coded('curing-salt'), is: coded('salt-of-strength', { salt: typed(salt), strength: percent(strength) }) },
      { what: coded(WEIGHED[method]), is: typed(weight) },
      ...(asked.meat ? [{ what: coded('meat'), is: typed(asked.meat) }] : []),
      ...(asked.pump === undefined ? [] : [{ what: coded('pumped-or-picked-up'), is: percent(asked.pump) }]),
    ],
    steps: [
      {
        what: coded('substance'),
        rule: coded('salt-times-content'),
        putIn: sum`${grams(massOf(salt))} × ${percent(strength)}`,
        gives: grams(substance, 4),
      },
      { what: coded('ingoing'), rule: { code: `${wordFor('ingoing', method).code}.rule` }, putIn: putIn(asked, substance), gives: is },
    ],
    results: [
      { what: coded('ingoing'), is, value: Number(ppm.numerator) / Number(ppm.denominator), unit: 'ppm' },
      { what: coded('counted-on'), is: wordFor('counted-on', method) },
    ],
    judged: [],
    notes: [coded('which-limit-holds')],
    sources: [curingRule('curing agents')],
    grounds: [],
    cautions: [cautions.curing, cautions.limits],
  };
}

function cureOf({ method, weight, meat, pump }: IngoingByMethod, substance: bigint): Cure | CannotCalculate {
  const whole = massOf(weight);
  switch (method) {
    case 'chopped':
    case 'dry-cured':
      return { method, substance, greenMeat: whole };
    case 'per batch':
      return { method, substance, batch: whole };
    case 'immersed until even':
      if (!meat) return cannot('meat-too');
      return { method, substance, greenMeat: massOf(meat), pickle: whole };
    case 'immersed':
      if (pump === undefined) return cannot('picked-up-in-percent');
      return { method, substance, pickle: whole, pickUpPercent: pump };
    default:
      if (pump === undefined) return cannot('pumped-in-percent');
      return { method, substance, pickle: whole, pumpPercent: pump };
  }
}

const WEIGHED: Record<Cure['method'], string> = {
  chopped: 'meat-block',
  'dry-cured': 'meat',
  pumped: 'pickle-made',
  massaged: 'pickle-made',
  immersed: 'pickle-made',
  'immersed until even': 'pickle-made',
  'per batch': 'everything-in-batch',
};

function putIn({ method, weight, meat, pump }: IngoingByMethod, substance: bigint): Sum {
  const [held, whole] = [grams(substance, 4), grams(massOf(weight))];
  const million = 1_000_000;
  if (method === 'immersed until even' && meat) return sum`${held} × ${million} ÷ (${grams(massOf(meat))} + ${whole})`;
  const isByPickle = method === 'pumped' || method === 'massaged' || method === 'immersed';
  return isByPickle && pump !== undefined ? sum`${held} × ${percent(pump)} × ${million} ÷ ${whole}` : sum`${held} × ${million} ÷ ${whole}`;
}
