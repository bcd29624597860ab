import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import type { ProductClass } from '../product-class';
import { figure, from, ingoingAtMost } from '../write-row';
import { baconRule } from './works';

const inBacon = from(baconRule, 'curing');
const only = (...among: ProductClass[]): { conditions: Condition[] } => ({ conditions: [{ kind: 'product', among }] });

/**
 * 9 CFR 424.22(b), as two documents quote it. The base is the skin-free green weight of the bellies; nitrate is not
 * allowed. An inspector's note gives pumped bacon ± 20 % of its target; no row rests on that.
 */
export const baconRows: readonly LimitRow[] = [
  inBacon(
    'bacon-pumped-nitrite',
    'Nitrite in pumped or massaged bacon',
    '(b), pumped or massaged, skinless',
    ingoingAtMost('sodium nitrite', 120, '120 ppm'),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-pumped-potassium-nitrite',
    'Potassium nitrite in pumped or massaged bacon',
    '(b), pumped or massaged, skinless',
    figure('potassium nitrite', 'ppm', { max: 148 }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-pumped-accelerator',
    'Ascorbate or erythorbate required in pumped bacon',
    '(b), pumped or massaged',
    figure('ascorbate or erythorbate', 'ppm', { min: 550, max: 550, printed: '≥ 550 and ≤ 550 ppm' }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-pumped-alternative-nitrite',
    'Nitrite in pumped bacon, alternative',
    '(b), pumped, alternative',
    figure('sodium nitrite', 'ppm', { max: 100 }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-pumped-alternative-potassium-nitrite',
    'Potassium nitrite in pumped bacon, alternative',
    '(b), pumped, alternative',
    figure('potassium nitrite', 'ppm', { max: 123 }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-fermenting-nitrite',
    'Nitrite in pumped bacon with sugar and lactic culture',
    '(b), pumped, fermenting',
    figure('sodium nitrite', 'ppm', { min: 40, max: 80 }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-fermenting-potassium-nitrite',
    'Potassium nitrite in pumped bacon with sugar and lactic culture',
    '(b), pumped, fermenting',
    figure('potassium nitrite', 'ppm', { min: 49, max: 99 }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-fermenting-sugar',
    'Sugar in pumped bacon with lactic culture',
    '(b), pumped, fermenting',
    figure('sugar', '%', { min: 0.7 }),
    only('bacon, pumped'),
  ),
  inBacon(
    'bacon-immersed-nitrite',
    'Nitrite in immersed bacon',
    '(b), immersion',
    ingoingAtMost('sodium nitrite', 120, '120 ppm'),
    only('bacon, immersed', 'bacon, Wiltshire'),
  ),
  inBacon(
    'bacon-immersed-potassium-nitrite',
    'Potassium nitrite in immersed bacon',
    '(b), immersion',
    figure('potassium nitrite', 'ppm', { max: 148 }),
    only('bacon, immersed', 'bacon, Wiltshire'),
  ),
  inBacon(
    'bacon-dry-cured-nitrite',
    'Nitrite in dry-cured bacon',
    '(b), dry cured',
    ingoingAtMost('sodium nitrite', 200, '200 ppm'),
    only('bacon, dry-cured'),
  ),
  inBacon(
    'bacon-dry-cured-potassium-nitrite',
    'Potassium nitrite in dry-cured bacon',
    '(b), dry cured',
    figure('potassium nitrite', 'ppm', { max: 246 }),
    { ...only('bacon, dry-cured'), note: '200 × 85.10 ÷ 69.00 is 246.7; the rule prints 246.' },
  ),
  inBacon(
    'bacon-nitrosamine',
    'Nitrosamines in bacon fried at 340 °F (171 °C), 3 min a side',
    '(b)',
    figure('nitrosamines', 'ppm', { max: 0.01, printed: '≤ 10 ppb' }),
    only('bacon, pumped'),
  ),
];
