import type { ConcentrationLimit } from '../limits/limit';
import { limitsIn } from './limits-in';
import { curing, set } from './published/us-inspected-2021.json';

/** Curing salts are toxic in excess: weigh, never guess. */
const most = (id: string): ConcentrationLimit => limitsIn(set, curing)('concentration', id);

export const nitriteComminuted = most('nitrite-comminuted');
export const nitritePumped = most('nitrite-pumped');
export const nitriteDryCured = most('nitrite-dry-cured');

/** Nitrate is not allowed in bacon. */
export const nitrateComminuted = most('nitrate-comminuted');
export const nitratePumped = most('nitrate-pumped');
export const nitrateDryCured = most('nitrate-dry-cured');

export const erythorbateComminuted = most('erythorbate-comminuted');
export const erythorbatePumped = most('erythorbate-pumped');

/** Printed on the meat food product; judged here on the meat block, which is never heavier, so on the strict side. */
export const phosphate = most('phosphate');

/** With the least of 120 ppm that refrigerated cured products are said to need; unconfirmed. */
export const nitriteComminutedRefrigerated: ConcentrationLimit = {
  ...nitriteComminuted,
  min: 12_000,
  source: {
    citation:
      'FSIS Directive 7620.3, Processing Inspectors’ Calculations Handbook, ch. 3, p. 12: at least 120 ppm in cured ' +
      '“Keep Refrigerated” products; most: 9 CFR 424.21(c)',
    edition: 'revised 1995',
    confirmed: false,
    url: 'https://www.fsis.usda.gov/policy/fsis-directives/7620.3',
  },
};
