import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import { limitsIn } from './limits-in';
import { accelerators, curing, phosphates, set } from './published/us-inspected-2021.json';
import type { Table } from './set-file';

/** Curing salts are toxic in excess: weigh, never guess. */
const most = (table: Table, id: string): ConcentrationLimit => limitsIn(set, table)('concentration', id);

export const nitriteComminuted = most(curing, 'nitrite-comminuted');
export const nitritePumped = most(curing, 'nitrite-pumped');
export const nitriteDryCured = most(curing, 'nitrite-dry-cured');

/** Nitrate is not allowed in bacon. */
export const nitrateComminuted = most(curing, 'nitrate-comminuted');
export const nitratePumped = most(curing, 'nitrate-pumped');
export const nitrateDryCured = most(curing, 'nitrate-dry-cured');

export const erythorbateComminuted = most(accelerators, 'erythorbate-comminuted');
export const erythorbatePumped = most(accelerators, 'erythorbate-pumped');

/** Printed on the meat food product; judged on the meat block, which is never heavier and so the strict side. */
export const phosphate = most(phosphates, 'phosphate');

/** Refrigerated cured products are said to need at least 120 ppm; unconfirmed. */
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
