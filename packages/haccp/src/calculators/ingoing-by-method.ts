import { basisOf, ingoingPpm, sayIngoing, substanceIn, type Cure } from '../formula/ingoing';
import { isFault } from '../formula/fault';
import { curingRule } from '../limit-sets/sources';
import type { EnteredMass } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import type { CannotCalculate, Calculation } from './calculation';

export type IngoingByMethod = {
  method: Cure['method'];
  /** Curing salt weighed, and the substance in it in percent. */
  salt: EnteredMass;
  strength: number;
  /** Meat for chopped and dry-cured, the pickle made for the others, everything in the batch for `per batch`. */
  weight: EnteredMass;
  /** The meat beside the pickle, immersed until even. */
  meat?: EnteredMass;
  /** Percent of the green weight pumped in or picked up. */
  pump?: number;
};

/** Ingoing parts per million by the way the cure gets into the meat. */
export function ingoingByMethod(asked: IngoingByMethod): Calculation | CannotCalculate {
  const { method, salt, strength, weight } = asked;
  const substance = substanceIn(massOf(salt), strength);
  if (typeof substance !== 'bigint') return { cannot: substance.fault };
  const cure = cureOf(asked, substance);
  if ('cannot' in cure) return cure;
  const ppm = ingoingPpm(cure);
  if (isFault(ppm)) return { cannot: ppm.fault };
  const said = sayIngoing(ppm);
  return {
    title: 'Ingoing amount by method',
    given: [
      { what: 'Method', said: method },
      { what: 'Curing salt', said: `${salt.value} ${salt.unit} of ${sayPercent(strength)}` },
      { what: WEIGHED[method], said: `${weight.value} ${weight.unit}` },
      ...(asked.meat ? [{ what: 'Meat', said: `${asked.meat.value} ${asked.meat.unit}` }] : []),
      ...(asked.pump === undefined ? [] : [{ what: 'Pumped in or picked up', said: sayPercent(asked.pump) }]),
    ],
    steps: [
      {
        what: 'Substance',
        rule: 'curing salt × content',
        putIn: `${sayMass(massOf(salt), 'g')} × ${sayPercent(strength)}`,
        gives: sayMass(substance, 'g', 4),
      },
      { what: 'Ingoing', rule: RULE[method], putIn: putIn(asked, substance), gives: said },
    ],
    results: [
      { what: 'Ingoing', said, value: Number(ppm.numerator) / Number(ppm.denominator), unit: 'ppm' },
      { what: 'Counted on', said: basisOf[method] },
    ],
    verdicts: [],
    notes: ['Which limit it is held to follows from the product and the jurisdiction: see the published limits.'],
    sources: [curingRule('curing agents')],
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
      if (!meat) return { cannot: 'Immersed until even, the meat counts too: give its weight.' };
      return { method, substance, greenMeat: massOf(meat), pickle: whole };
    case 'immersed':
      if (pump === undefined) return { cannot: 'Give how much pickle was picked up, in percent of the green weight.' };
      return { method, substance, pickle: whole, pickUpPercent: pump };
    default:
      if (pump === undefined) return { cannot: 'Give how much was pumped in, in percent of the green weight.' };
      return { method, substance, pickle: whole, pumpPercent: pump };
  }
}

const WEIGHED: Record<Cure['method'], string> = {
  chopped: 'Meat block',
  'dry-cured': 'Meat',
  pumped: 'Pickle made',
  massaged: 'Pickle made',
  immersed: 'Pickle made',
  'immersed until even': 'Pickle made',
  'per batch': 'Everything in the batch',
};
const PICKLE = 'substance × pump % × 1,000,000 ÷ pickle';
const RULE: Record<Cure['method'], string> = {
  chopped: 'substance × 1,000,000 ÷ meat block',
  'dry-cured': 'substance × 1,000,000 ÷ meat',
  pumped: PICKLE,
  massaged: PICKLE,
  immersed: 'substance × pick-up % × 1,000,000 ÷ pickle',
  'immersed until even': 'substance × 1,000,000 ÷ (meat + pickle)',
  'per batch': 'substance × 1,000,000 ÷ batch',
};

function putIn({ method, weight, meat, pump }: IngoingByMethod, substance: bigint): string {
  const whole = sayMass(massOf(weight), 'g');
  const base = method === 'immersed until even' && meat ? `(${sayMass(massOf(meat), 'g')} + ${whole})` : whole;
  const share = RULE[method].includes('%') && pump !== undefined ? ` × ${sayPercent(pump)}` : '';
  return `${sayMass(substance, 'g', 4)}${share} × 1,000,000 ÷ ${base}`;
}
