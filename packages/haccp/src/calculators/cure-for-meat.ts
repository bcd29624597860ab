import { doseFor, mostThousandths } from '../kinds/concentration/dose-for';
import { doseOnScale, type DoseOnScale } from '../kinds/concentration/dose-for-scale';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import { coded, wordFor } from '../limits/coded';
import { sum } from '../limits/line-part';
import { decimalText } from '../quantity/decimal';
import { divide } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import { massOf, roundedMass } from '../quantity/weigh';
import type { Calculation, Result, Step } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, percent, typed } from './figures';

export type CureForMeat = {
  meat: EnteredMass;
  /** Percent of the substance in the curing salt. */
  strength: number;
  limit: ConcentrationLimit;
  /** Step of the scale. */
  scale: EnteredMass;
};

export function cureForMeat({ meat, strength, limit, scale }: CureForMeat): Calculation | CannotCalculate {
  const block = massOf(meat);
  const dose = doseFor(limit, block, strength);
  if (block <= 0n) return cannot('meat-weighs-nothing');
  if (!dose) return cannot('salt-unusable', { strength: percent(strength) });

  const bound = (what: string, amount: bigint, ppm: string, rounding: 'up' | 'down'): [Result, Step] => {
    const is = grams(amount, 3, rounding);
    return [
      { what: coded(what), is, value: Number(divide(amount, 10n ** 12n, rounding)) / 1000, unit: 'g' },
      {
        what: coded(what),
        rule: coded('dose.rule'),
        putIn: sum`${grams(block)} × ${{ value: ppm, unit: 'ppm' }} ÷ ${1_000_000} ÷ ${percent(strength)}`,
        gives: is,
      },
    ];
  };
  const most = mostThousandths(limit);
  const least = limit.min;
  const bounds: [Result, Step][] = [
    ...(dose.least !== undefined && least !== undefined ? [bound('at-least', dose.least, decimalText(least, 2), 'up')] : []),
    ...(dose.most !== undefined && most !== undefined ? [bound('at-most', dose.most, decimalText(most, 3), 'down')] : []),
  ];
  return {
    given: [
      { what: coded('meat-block'), is: typed(meat) },
      { what: coded('substance-in-salt', { substance: wordFor('substance', limit.substance) }), is: percent(strength) },
      { what: coded('limit'), is: { limit } },
      { what: coded('scale-shows-steps'), is: typed(scale) },
    ],
    steps: bounds.map(([, step]) => step),
    results: [...bounds.map(([result]) => result), onScale(doseOnScale(dose, { step: massOf(scale) }), scale)],
    judged: [],
    notes: [coded('meat-block-is'), coded('others-bring-it-too')],
    sources: [limit.source],
    grounds: [],
    cautions: [cautions.curing, cautions.limits],
  };
}

function onScale({ shows, because, isFineEnough }: DoseOnScale, { unit }: EnteredMass): Result {
  const what = coded(isFineEnough ? 'on-this-scale' : 'scale-too-coarse');
  if (!shows) return { what, is: because };
  const figures = { ...because.figures, from: roundedMass(shows.from, unit), to: roundedMass(shows.to, unit) };
  return { what, is: coded(shows.from === shows.to ? `${because.code}-at-one` : `${because.code}-between`, figures) };
}
