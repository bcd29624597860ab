import type { Ratio } from '../formula/curing-species';
import { isFault } from '../formula/fault';
import { sayIngoing } from '../formula/ingoing';
import { nitriteByCertificate, type NitriteCertificate } from '../formula/natural-nitrite';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import { sayLimit } from '../limits/say-limit';
import type { Told } from '../limits/told';
import type { EnteredMass } from '../quantity/mass';
import { sayPercent } from '../quantity/percent';
import { massOf, sayMass } from '../quantity/weigh';
import { cautions } from './cautions';
import { countedBy, figureOfIngoing, judgedBefore, numberOf } from './published-figure';
import type { CannotCalculate, Calculation } from './calculation';

export type NitriteFromNaturalSource = {
  natural: EnteredMass;
  meat: EnteredMass;
  /** The lot on the bag that is weighed. */
  ingredientLot: string;
  certificate: NitriteCertificate;
  limit: ConcentrationLimit;
};

/** Nitrite that a natural source brings by the certificate of its lot, at least and at most, and what a limit makes of it. */
export function nitriteFromNaturalSource(asked: NitriteFromNaturalSource): Calculation | CannotCalculate {
  const { natural, meat, ingredientLot, certificate, limit } = asked;
  if (limit.substance !== 'sodium nitrite') return { cannot: `The limit is on ${limit.substance}: choose one on sodium nitrite.` };
  const block = massOf(meat);
  if (block <= 0n) return { cannot: 'The meat block weighs nothing: weigh the trimmed meat first.' };
  const brought = nitriteByCertificate(massOf(natural), ingredientLot, certificate);
  if (isFault(brought)) return { cannot: `${brought.fault} Ask the supplier for the certificate of this lot.` };
  const ppm = (mass: bigint): Ratio => ({ numerator: mass * 1_000_000n, denominator: block });
  const [least, most] = [ppm(brought.least), ppm(brought.most)];
  const spread = certificate.plusMinus ? ` ± ${sayPercent(certificate.plusMinus)}` : '';
  const asSalt = certificate.as === 'NO₂' ? ' × NaNO₂ ÷ NO₂ by molar mass' : '';
  return {
    title: 'Nitrite from a natural source',
    given: [
      { what: 'Natural source', said: `${natural.value} ${natural.unit} of lot ${ingredientLot}` },
      { what: 'By its certificate', said: `${sayPercent(certificate.percent)}${spread} as ${certificate.as}` },
      { what: 'Meat block', said: `${meat.value} ${meat.unit}` },
      { what: 'Limit', said: sayLimit(limit) },
    ],
    steps: [
      {
        what: 'Sodium nitrite brought',
        rule: `weight × (content ± spread)${asSalt}`,
        putIn: `${sayMass(massOf(natural), 'g')} × (${sayPercent(certificate.percent)}${spread || ' ± 0 %'})${asSalt}`,
        gives: `${sayMass(brought.least, 'g', 4, 'down')} to ${sayMass(brought.most, 'g', 4, 'up')}`,
      },
      {
        what: 'Ingoing',
        rule: 'sodium nitrite × 1,000,000 ÷ meat block',
        putIn: `${sayMass(brought.least, 'g', 4, 'down')} to ${sayMass(brought.most, 'g', 4, 'up')} × 1,000,000 ÷ ${sayMass(block, 'g')}`,
        gives: `${sayIngoing(least, 2, 'down')} to ${sayIngoing(most, 2, 'up')}`,
      },
    ],
    results: [
      { what: 'At least', said: sayIngoing(least, 2, 'down'), value: numberOf(least), unit: 'ppm' },
      { what: 'At most', said: sayIngoing(most, 2, 'up'), value: numberOf(most), unit: 'ppm' },
    ],
    verdicts: verdictsOf(limit, least, most),
    notes: [
      'A least is held against what it brings at least, a most against what it brings at most.',
      'Nitrite from a natural source is as toxic as from a curing salt. The strength differs from lot to lot.',
    ],
    sources: [
      { citation: `Certificate of lot ${certificate.ingredientLot}, by the supplier`, edition: '', confirmed: false },
      limit.source,
    ],
    cautions: [cautions.curing, cautions.limits],
  };
}

function verdictsOf(limit: ConcentrationLimit, least: Ratio, most: Ratio): Told[] {
  const { min, max, ...figure } = figureOfIngoing(limit);
  const sides: [bound: number | undefined, ratio: Ratio, side: 'min' | 'max', next: string][] = [
    [min, least, 'min', 'Weigh more of it, or take another source.'],
    [max, most, 'max', 'Weigh less of it.'],
  ];
  return sides.flatMap(([bound, ratio, side, next]) =>
    bound === undefined ? [] : [judgedBefore(countedBy(limit, ratio), { ...figure, [side]: bound }, next)],
  );
}
