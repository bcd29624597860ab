import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { curedCooked, uncookedCured, type ProductClass } from '../product-class';
import { figure, from, ingoingAtMost } from '../write-row';
import { after, before } from './works';

const only = (...among: ProductClass[]): { conditions: Condition[] } => ({ conditions: [{ kind: 'product', among }] });
/** Traditional cures, 08.3.4, have a residual limit alone. */
const heatedCured = curedCooked.filter((product) => product !== 'ham, Wiltshire');
const uncookedTogether: readonly ProductClass[] = [
  ...uncookedCured.filter((product) => product !== 'dry-cured ham'),
  'bacon, pumped',
  'bacon, immersed',
];
const heated = only(...heatedCured);
const uncooked = only(...uncookedTogether);
const traditional = only('dry-cured ham', 'bacon, dry-cured');
const sterilised = only('sterilised cured meat');
const remembered = { known: 'from memory' } as const;
const ended = { validUntil: '2025-10-08' } as const;
const mayAnotherRowGovern =
  'A row of 30 mg/kg for “only traditionally cured products” exists since 9 October 2025; for which food was not read.';
const perBatch =
  'Whether per kg of meat or of the whole batch is left open; judged here on the meat block, the strict side.';

const old = from(before, 'curing');
export const nitriteBefore: readonly LimitRow[] = [
  old(
    'nitrite-preparations',
    'Nitrite added, named meat preparations',
    '08.2',
    figure('nitrite as NaNO₂, added', 'ppm', { max: 150 }),
    { ...ended },
  ),
  old(
    'nitrite-uncooked',
    'Nitrite added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { ...uncooked, ...ended, note: perBatch },
  ),
  old(
    'nitrate-uncooked',
    'Nitrate added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrate', 150, '150 mg/kg as NaNO₃'),
    { ...uncooked, ...ended, note: perBatch },
  ),
  old(
    'nitrite-heat-treated',
    'Nitrite added, heat-treated',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { ...heated, ...ended, note: perBatch },
  ),
  old(
    'nitrite-sterilised',
    'Nitrite added, sterilised (F₀ above 3.00)',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 100, '100 mg/kg as NaNO₂'),
    { ...sterilised, ...ended, note: perBatch },
  ),
  old(
    'nitrite-dry-cured-residual',
    'Nitrite residual, dry-cured ham type',
    '08.3.4',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 100 }),
    { ...only('dry-cured ham'), ...ended },
  ),
  old(
    'nitrate-dry-cured-residual',
    'Nitrate residual, dry-cured ham type',
    '08.3.4',
    figure('nitrate as NaNO₃, residual', 'ppm', { max: 250 }),
    { ...only('dry-cured ham'), ...ended },
  ),
  old(
    'nitrite-bacon-residual',
    'Nitrite residual, Wiltshire and dry-cured bacon',
    '08.3.4',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 175 }),
    { ...only('bacon, dry-cured', 'bacon, Wiltshire'), ...ended },
  ),
  old(
    'nitrite-traditional',
    'Nitrite added, Vysočina, Lovecký salám and the like',
    '08.3.4.3',
    figure('nitrite as NaNO₂, added', 'ppm', { max: 180 }),
    { ...only('dry sausage'), ...ended },
  ),
  old(
    'nitrate-rohwurst',
    'Nitrate alone, Rohwürste',
    '08.3.4.3',
    figure('nitrate as NaNO₃, added', 'ppm', { max: 300 }),
    { ...only('dry sausage'), ...ended },
  ),
  old(
    'nitrate-long-cured',
    'Nitrate alone, long-cured salchichón, chorizo, saucisson sec',
    '08.3.4.3',
    figure('nitrate as NaNO₃, added', 'ppm', { max: 250 }),
    { ...only('dry sausage'), ...ended },
  ),
  old(
    'nitrite-tongue-residual',
    'Nitrite residual, cured tongue',
    '08.3.4.1',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 50 }),
    { ...ended },
  ),
  old(
    'nitrate-tongue-residual',
    'Nitrate residual, cured tongue',
    '08.3.4.1',
    figure('nitrate as NaNO₃, residual', 'ppm', { max: 10 }),
    { ...ended },
  ),
  old(
    'nitrite-rohschinken-residual',
    'Nitrite residual, Rohschinken',
    '08.3.4',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 50 }),
    { ...traditional, ...ended },
  ),
  old(
    'nitrate-rohschinken-residual',
    'Nitrate residual, Rohschinken',
    '08.3.4',
    figure('nitrate as NaNO₃, residual', 'ppm', { max: 250 }),
    { ...traditional, ...ended },
  ),
];

const now = from(after, 'curing');
export const nitriteAfter: readonly LimitRow[] = [
  now(
    'nitrite-preparations',
    'Nitrite added, named meat preparations',
    '08.2',
    figure('nitrite as NO₂ ion, added', 'ppm', { max: 80 }),
    remembered,
  ),
  now(
    'nitrite-uncooked',
    'Nitrite added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { ...uncooked, note: perBatch },
  ),
  now(
    'nitrate-uncooked',
    'Nitrate added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrate', 90, '90 mg/kg as NO₃ ion', 'NO₃'),
    { ...uncooked, note: perBatch },
  ),
  now(
    'nitrite-heat-treated',
    'Nitrite added, heat-treated',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { ...heated, note: perBatch },
  ),
  now(
    'nitrite-sterilised',
    'Nitrite added, sterilised (F₀ above 3.00)',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 55, '55 mg/kg as NO₂ ion', 'NO₂'),
    { ...sterilised, note: perBatch },
  ),
  now(
    'nitrite-residual',
    'Nitrite residual, from all sources, through the shelf life',
    '08.3.1, 08.3.2',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 45 }),
    { ...only(...heatedCured, ...uncookedTogether), ...remembered },
  ),
  now(
    'nitrite-sterilised-residual',
    'Nitrite residual, sterilised',
    '08.3.2',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 25 }),
    { ...sterilised, ...remembered },
  ),
  now(
    'nitrite-dry-cured-residual',
    'Nitrite residual, dry-cured ham type',
    '08.3.4',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 65 }),
    { ...only('dry-cured ham'), note: mayAnotherRowGovern },
  ),
  now(
    'nitrate-dry-cured-residual',
    'Nitrate residual, dry-cured ham type',
    '08.3.4',
    figure('nitrate as NO₃ ion, residual', 'ppm', { max: 150 }),
    only('dry-cured ham'),
  ),
  now(
    'nitrite-bacon-residual',
    'Nitrite residual, dry-cured bacon',
    '08.3.4',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 105 }),
    {
      ...only('bacon, dry-cured'),
      ...remembered,
      note: `Said of Wiltshire bacon; whether dry-cured bacon has the same is not confirmed. ${mayAnotherRowGovern}`,
    },
  ),
  now(
    'nitrite-wiltshire-residual',
    'Nitrite residual, Wiltshire bacon',
    '08.3.4',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 105 }),
    only('bacon, Wiltshire'),
  ),
  from({ ...after, citation: 'Commission Decision (EU) 2024/1225', edition: '30 April 2024' }, 'curing')(
    'nitrite-denmark',
    'Nitrite added, Denmark',
    'general figure',
    ingoingAtMost('sodium nitrite', 60, '60 mg/kg as NaNO₂'),
    { conditions: [{ kind: 'place', among: ['Denmark'] }, ...heated.conditions], ...remembered },
  ),
];
