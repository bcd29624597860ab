import type { ConcentrationLimit, RestrictedSubstance, Source } from '../limits/limit';
import { curingRule } from './sources';

/**
 * The rule prints amounts; ppm on the green weight of the meat block follows by arithmetic: ¼ oz on 100 lb (1600 oz) is
 * 156.25 ppm. Amounts in pickle are per 100 gal at 10 % pump and assume a pickle of 10 lb/gal (trade convention, from
 * memory).
 * Curing salts are toxic in excess: weigh, never guess.
 */
const most = (
  substance: RestrictedSubstance,
  hundredths: number,
  printed: string,
  place: string,
): ConcentrationLimit => ({
  kind: 'concentration',
  substance,
  max: hundredths,
  printed,
  source: curingRule(place),
});

const NITRITE = 'curing agents, sodium or potassium nitrite';
const NITRATE = 'curing agents, sodium or potassium nitrate';
const ERYTHORBATE = 'curing accelerators, sodium ascorbate or erythorbate';

export const nitriteComminuted = most(
  'sodium nitrite',
  15_625,
  '¼ oz per 100 lb (156 ppm)',
  `${NITRITE}, chopped meat`,
);
export const nitritePumped = most(
  'sodium nitrite',
  20_000,
  '2 lb per 100 gal pickle at 10 % pump (200 ppm)',
  `${NITRITE}, pickle`,
);
export const nitriteDryCured = most('sodium nitrite', 62_500, '1 oz per 100 lb (625 ppm)', `${NITRITE}, dry cure`);

/** Nitrate is not allowed in bacon. */
export const nitrateComminuted = most(
  'sodium nitrate',
  171_875,
  '2¾ oz per 100 lb (1718.75 ppm)',
  `${NITRATE}, chopped meat`,
);
export const nitratePumped = most(
  'sodium nitrate',
  70_000,
  '7 lb per 100 gal pickle at 10 % pump (700 ppm)',
  `${NITRATE}, pickle`,
);
export const nitrateDryCured = most('sodium nitrate', 218_750, '3½ oz per 100 lb (2187.5 ppm)', `${NITRATE}, dry cure`);

/** ⅞ oz on 1600 oz is 546.875 ppm, which hundredths cannot hold. */
export const erythorbateComminuted: ConcentrationLimit = {
  ...most('sodium erythorbate', 54_687, '⅞ oz per 100 lb (547 ppm)', `${ERYTHORBATE}, chopped meat`),
  maxThousandths: 546_875,
};
export const erythorbatePumped: ConcentrationLimit = {
  ...most('sodium erythorbate', 54_687, '87.5 oz per 100 gal pickle at 10 % pump (547 ppm)', `${ERYTHORBATE}, pickle`),
  maxThousandths: 546_875,
};

/** Printed on the meat food product; judged here on the meat block, which is never heavier, so on the strict side. */
export const phosphate = most('phosphate', 500_000, '0.5 %', 'phosphates');

const leastNitrite: Source = {
  citation:
    'FSIS Directive 7620.3, Processing Inspectors’ Calculations Handbook, ch. 3, p. 12: at least 120 ppm in cured ' +
    '“Keep Refrigerated” products; most: 9 CFR 424.21(c)',
  edition: 'revised 1995',
  confirmed: false,
  url: 'https://www.fsis.usda.gov/policy/fsis-directives/7620.3',
};

/** With the least of 120 ppm that refrigerated cured products are said to need; unconfirmed. */
export const nitriteComminutedRefrigerated: ConcentrationLimit = {
  ...nitriteComminuted,
  min: 12_000,
  source: leastNitrite,
};
