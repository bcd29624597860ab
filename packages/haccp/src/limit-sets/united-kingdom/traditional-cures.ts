import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import type { ProductClass } from '../product-class';
import { figure, from } from '../write-row';
import { curesOf2012, nitriteInIreland } from './works';

const britain: Condition = { kind: 'place', among: ['England', 'Wales', 'Scotland'] };
const ireland: Condition = { kind: 'place', among: ['Northern Ireland', 'Ireland'] };
const only = (place: Condition, ...among: ProductClass[]) => [place, { kind: 'product', among } as const];
const dryCured: Condition = {
  kind: 'statement',
  says: 'It is dry-cured and then matures for at least 4 days; otherwise the limit is on what is added (08.3.1).',
};
const isInferred = 'Printed so in 2012; whether Great Britain has changed it since was not read.';
const salt = (max: number) => figure('nitrite as NaNO₂, residual', 'ppm', { max });
const nitrate = (max: number) => figure('nitrate as NaNO₃, residual', 'ppm', { max });
const ion = (max: number) => figure('nitrite as NO₂ ion, residual', 'ppm', { max });
const mayAnotherRowGovern =
  'A row of 30 mg/kg for “only traditionally cured products” exists since 9 October 2025; for which food was not read.';

const then = from(curesOf2012, 'curing');
const now = from(nitriteInIreland, 'curing');

/**
 * Traditional cures: what is left at the end of production is limited, not what was added. Table 34, group 7 of the
 * text of 2012; nitrate may be present by conversion. In Northern Ireland and Ireland as Regulation (EU) 2023/2108.
 */
export const traditionalCures: readonly LimitRow[] = [
  then('nitrite-bacon-residual', 'Nitrite left in dry-cured bacon', '08.3.4, Table 34, group 7', salt(175), {
    conditions: [...only(britain, 'bacon, dry-cured'), dryCured],
    note: isInferred,
  }),
  then('nitrate-bacon-residual', 'Nitrate left in dry-cured bacon', '08.3.4, Table 34, group 7', nitrate(250), {
    conditions: [...only(britain, 'bacon, dry-cured'), dryCured],
    note: `May come of nitrite by conversion. ${isInferred}`,
  }),
  then('nitrite-wiltshire-residual', 'Nitrite left in Wiltshire bacon', '08.3.4, Table 34, group 7', salt(175), {
    conditions: only(britain, 'bacon, Wiltshire'),
    note: isInferred,
  }),
  then(
    'nitrite-dry-cured-residual',
    'Nitrite left in dry-cured and Wiltshire ham',
    '08.3.4, Table 34, group 7',
    salt(100),
    { conditions: only(britain, 'dry-cured ham', 'ham, Wiltshire'), note: isInferred },
  ),
  from({ ...curesOf2012, edition: 'as tabulated by EFSA in 2017' }, 'curing')(
    'nitrate-dry-cured-residual',
    'Nitrate left in dry-cured ham',
    '08.3.4',
    nitrate(250),
    { conditions: only(britain, 'dry-cured ham'), note: isInferred },
  ),
  now('nitrite-wiltshire-residual-ion', 'Nitrite left in Wiltshire bacon', '08.3.4', ion(105), {
    conditions: only(ireland, 'bacon, Wiltshire'),
  }),
  now('nitrite-bacon-residual-ion', 'Nitrite left in dry-cured bacon', '08.3.4', ion(105), {
    known: 'from memory',
    conditions: only(ireland, 'bacon, dry-cured'),
    note: `Said of Wiltshire bacon; whether dry-cured bacon has the same is not confirmed. ${mayAnotherRowGovern}`,
  }),
  now('nitrite-dry-cured-residual-ion', 'Nitrite left in dry-cured ham', '08.3.4', ion(65), {
    conditions: only(ireland, 'dry-cured ham'),
    note: mayAnotherRowGovern,
  }),
  now(
    'nitrate-dry-cured-residual-ion',
    'Nitrate left in dry-cured ham',
    '08.3.4',
    figure('nitrate as NO₃ ion, residual', 'ppm', { max: 150 }),
    { conditions: only(ireland, 'dry-cured ham') },
  ),
];
