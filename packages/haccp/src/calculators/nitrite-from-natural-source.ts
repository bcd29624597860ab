import type { Ratio } from '../formula/curing-species';
import { isFault } from '../formula/fault';
import { nitriteByCertificate, type NitriteCertificate } from '../formula/natural-nitrite';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import { coded } from '../limits/coded';
import { sum } from '../limits/line-part';
import type { EnteredMass } from '../quantity/mass';
import { massOf } from '../quantity/weigh';
import type { Calculation, JudgedBefore } from './calculation';
import { atFault, cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { grams, percent, typed } from './figures';
import { countedBy, figureOfIngoing, ingoingOf, judgedBefore, numberOf } from './published-figure';

export type NitriteFromNaturalSource = {
  natural: EnteredMass;
  meat: EnteredMass;
  /** As on the bag that is weighed. */
  ingredientLot: string;
  certificate: NitriteCertificate;
  limit: ConcentrationLimit;
};

export function nitriteFromNaturalSource(asked: NitriteFromNaturalSource): Calculation | CannotCalculate {
  const { natural, meat, ingredientLot, certificate, limit } = asked;
  if (limit.substance !== 'sodium nitrite') return cannot('certificate-limit-on-another');
  const block = massOf(meat);
  if (block <= 0n) return cannot('meat-weighs-nothing');
  const brought = nitriteByCertificate(massOf(natural), ingredientLot, certificate);
  if (isFault(brought)) return atFault(brought, 'ask-for-the-certificate');
  const ppm = (mass: bigint): Ratio => ({ numerator: mass * 1_000_000n, denominator: block });
  const [least, most] = [ppm(brought.least), ppm(brought.most)];
  const [leastGrams, mostGrams] = [grams(brought.least, 4, 'down'), grams(brought.most, 4, 'up')];
  const [content, spread] = [percent(certificate.percent), percent(certificate.plusMinus ?? 0)];
  const asSalt = certificate.as === 'NO₂' ? ' × NaNO₂ ÷ NO₂' : '';
  const [atLeast, atMost] = [ingoingOf(least, 'down'), ingoingOf(most, 'up')];
  return {
    given: [
      { what: coded('natural-source'), is: coded('weight-of-lot', { weight: typed(natural), lot: ingredientLot }) },
      { what: coded('by-its-certificate'), is: sum`${content} ± ${spread} (${certificate.as})` },
      { what: coded('meat-block'), is: typed(meat) },
      { what: coded('limit'), is: { limit } },
    ],
    steps: [
      {
        what: coded('nitrite-brought'),
        rule: coded(asSalt ? 'nitrite-brought-as-ion.rule' : 'nitrite-brought.rule'),
        putIn: sum`${grams(massOf(natural))} × (${content} ± ${spread})${asSalt}`,
        gives: coded('from-to', { from: leastGrams, to: mostGrams }),
      },
      {
        what: coded('ingoing'),
        rule: coded('ingoing-nitrite.rule'),
        putIn: sum`(${coded('from-to', { from: leastGrams, to: mostGrams })}) × ${1_000_000} ÷ ${grams(block)}`,
        gives: coded('from-to', { from: atLeast, to: atMost }),
      },
    ],
    results: [
      { what: coded('at-least'), is: atLeast, value: numberOf(least), unit: 'ppm' },
      { what: coded('at-most'), is: atMost, value: numberOf(most), unit: 'ppm' },
    ],
    judged: judgedBySides(limit, least, most),
    notes: [coded('least-against-least'), coded('natural-as-toxic')],
    sources: [limit.source],
    grounds: [coded('certificate-of-lot', { lot: certificate.ingredientLot })],
    cautions: [cautions.curing, cautions.limits],
  };
}

function judgedBySides(limit: ConcentrationLimit, least: Ratio, most: Ratio): JudgedBefore[] {
  const { min, max, ...figure } = figureOfIngoing(limit);
  const sides: [bound: number | undefined, ratio: Ratio, side: 'min' | 'max', next: string][] = [
    [min, least, 'min', 'weigh-more'],
    [max, most, 'max', 'weigh-less'],
  ];
  return sides.flatMap(([bound, ratio, side, next]) =>
    bound === undefined ? [] : [judgedBefore(countedBy(limit, ratio), { ...figure, [side]: bound }, next)],
  );
}
