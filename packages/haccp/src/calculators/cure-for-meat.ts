import { doseFor, mostThousandths } from '../kinds/concentration/dose-for';
import { doseOnScale, type DoseOnScale } from '../kinds/concentration/dose-for-scale';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import { sayLimit } from '../limits/say-limit';
import { decimalText } from '../quantity/decimal';
import { divide } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import type { CannotCalculate, Result, Step, Calculation } from './calculation';

export type CureForMeat = {
  meat: EnteredMass;
  /** Percent of the substance in the curing salt. */
  strength: number;
  limit: ConcentrationLimit;
  /** What the scale shows steps of. */
  scale: EnteredMass;
};

/** How much curing salt a meat block takes, at least and at most, and whether the scale can weigh it. */
export function cureForMeat({ meat, strength, limit, scale }: CureForMeat): Calculation | CannotCalculate {
  const block = massOf(meat);
  const dose = doseFor(limit, block, strength);
  if (block <= 0n) return { cannot: 'The meat block weighs nothing: weigh the trimmed meat first.' };
  if (!dose) return { cannot: `A curing salt of ${strength} % cannot be used: give a percentage above 0, at most 100.` };

  const step = (what: string, ppm: string, grams: bigint, rounding: 'up' | 'down'): Step => ({
    what,
    rule: 'meat block × ppm ÷ 1,000,000 ÷ content of the curing salt',
    putIn: `${sayMass(block, 'g')} × ${ppm} ÷ 1,000,000 ÷ ${sayPercent(strength)}`,
    gives: sayMass(grams, 'g', 3, rounding),
  });
  const most = mostThousandths(limit);
  const least = limit.min;
  const bounds: [Result, Step][] = [
    ...(dose.least !== undefined && least !== undefined
      ? [bound('At least', dose.least, 'up', step('At least', `${decimalText(least, 2)} ppm`, dose.least, 'up'))]
      : []),
    ...(dose.most !== undefined && most !== undefined
      ? [bound('At most', dose.most, 'down', step('At most', `${decimalText(most, 3)} ppm`, dose.most, 'down'))]
      : []),
  ];
  return {
    title: 'Curing salt for so much meat',
    given: [
      { what: 'Meat block', said: `${meat.value} ${meat.unit}` },
      { what: `${limit.substance} in the curing salt`, said: sayPercent(strength) },
      { what: 'Limit', said: sayLimit(limit) },
      { what: 'The scale shows steps of', said: `${scale.value} ${scale.unit}` },
    ],
    steps: bounds.map(([, worked]) => worked),
    results: [...bounds.map(([result]) => result), onScale(doseOnScale(dose, { step: massOf(scale) }), scale)],
    verdicts: [],
    notes: [
      'The meat block is the trimmed meat as it goes in, without bone, water, ice or spices.',
      'What other ingredients bring of the same substance has to be taken off.',
    ],
    sources: [limit.source],
    cautions: [cautions.curing, cautions.limits],
  };
}

const bound = (what: string, grams: bigint, rounding: 'up' | 'down', worked: Step): [Result, Step] => [
  { what, said: sayMass(grams, 'g', 3, rounding), value: Number(divide(grams, 10n ** 12n, rounding)) / 1000, unit: 'g' },
  worked,
];

/** What the scale may show so that the weight is surely within, and whether it is fine enough for so little. */
function onScale({ shows, because, isFineEnough }: DoseOnScale, { unit }: EnteredMass): Result {
  const what = isFineEnough ? 'On this scale' : 'This scale is too coarse';
  if (!shows) return { what, said: because };
  const [from, to] = [sayMass(shows.from, unit), sayMass(shows.to, unit)];
  return { what, said: `what shows ${from === to ? to : `${from} to ${to}`} is surely within: ${because}` };
}
