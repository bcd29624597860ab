import * as curing from '../curing';
import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { bacon, chopped, pumpedOrImmersed, type ProductClass } from '../product-class';
import { figure, from } from '../write-row';
import { handbook, ingredients } from './works';

const rule = from(ingredients, 'curing');
const additive = from(ingredients, 'additive');
const only = (...among: ProductClass[]): { conditions: Condition[] } => ({ conditions: [{ kind: 'product', among }] });
const inChopped = only(...chopped);
const inPickled = only(...pumpedOrImmersed);
const inDryCured = only('dry-cured ham');
const cured = only(...chopped, ...pumpedOrImmersed, 'dry-cured ham');
const pickle =
  'Per 100 gal at 10 % pump; 2 lb are 200 ppm where a pickle weighs 10 lb/gal (trade convention, from memory).';

/**
 * 9 CFR 424.21(c), pp. 569-571. The same weight of sodium or potassium salt, except in bacon (Directive 7620.3, p. 11).
 */
export const curingRows: readonly LimitRow[] = [
  rule(
    'nitrite-comminuted',
    'Nitrite in chopped meat',
    'p. 570, curing agents, chopped meat',
    curing.nitriteComminuted,
    { ...inChopped, isDefault: true },
  ),
  rule(
    'nitrite-pumped',
    'Nitrite in pumped, massaged or immersed meat',
    'p. 570, curing agents, pickle',
    curing.nitritePumped,
    { ...inPickled, isDefault: true, note: pickle },
  ),
  rule('nitrite-dry-cured', 'Nitrite in dry-cured meat', 'p. 570, curing agents, dry cure', curing.nitriteDryCured, {
    ...inDryCured,
    isDefault: true,
  }),
  rule(
    'nitrate-comminuted',
    'Nitrate in chopped meat',
    'p. 570, curing agents, chopped meat',
    curing.nitrateComminuted,
    { ...inChopped, isDefault: true },
  ),
  rule('nitrate-pumped', 'Nitrate in pumped or immersed meat', 'p. 570, curing agents, pickle', curing.nitratePumped, {
    ...inPickled,
    isDefault: true,
    note: pickle,
  }),
  rule('nitrate-dry-cured', 'Nitrate in dry-cured meat', 'p. 570, curing agents, dry cure', curing.nitrateDryCured, {
    ...inDryCured,
    isDefault: true,
  }),
  rule(
    'nitrite-finished',
    'Nitrite in the finished product',
    'p. 570, note on curing agents',
    figure('nitrite as sodium nitrite, finished product', 'ppm', { max: 200 }),
    { ...cured, isDefault: true },
  ),
  rule('nitrate-bacon', 'Nitrate in bacon: none', 'p. 570, curing agents', figure('nitrate', 'ppm', { max: 0 }), {
    ...only(...bacon),
    isDefault: true,
  }),
  rule(
    'nitrite-baby-food',
    'Nitrite and nitrate in baby, junior and toddler food: none',
    'p. 571',
    figure('nitrite and nitrate', 'ppm', { max: 0 }),
    { ...only('baby food'), isDefault: true },
  ),
  rule(
    'erythorbate-comminuted',
    'Ascorbate or erythorbate in chopped meat',
    'p. 569, curing accelerators, chopped meat',
    curing.erythorbateComminuted,
    { ...inChopped, isDefault: true },
  ),
  rule(
    'erythorbate-pumped',
    'Ascorbate or erythorbate in pumped meat',
    'p. 569, curing accelerators, pickle',
    curing.erythorbatePumped,
    { ...inPickled, isDefault: true },
  ),
  rule(
    'ascorbic-comminuted',
    'Ascorbic or erythorbic acid in chopped meat',
    'p. 569, curing accelerators, chopped meat',
    figure('ascorbic or erythorbic acid', 'ppm', { max: 468.75, printed: '≤ ¾ oz per 100 lb (468.75 ppm)' }),
    { ...inChopped, isDefault: true },
  ),
  rule(
    'ascorbic-pumped',
    'Ascorbic or erythorbic acid in pumped meat',
    'p. 569, curing accelerators, pickle',
    figure('ascorbic or erythorbic acid', 'ppm', {
      max: 468.75,
      printed: '≤ 75 oz per 100 gal pickle at 10 % pump (468.75 ppm)',
    }),
    { ...inPickled, isDefault: true },
  ),
  rule(
    'citric',
    'Citric acid or sodium citrate in place of the accelerator',
    'p. 569, curing accelerators',
    figure('share of the accelerator replaced', '%', { max: 50 }),
    { ...cured, isDefault: true },
  ),
  rule(
    'fumaric',
    'Fumaric acid in chopped meat',
    'p. 569, curing accelerators',
    figure('fumaric acid', '%', { max: 0.065, printed: '≤ 0.065 % (1 oz per 100 lb)' }),
    { ...inChopped, isDefault: true },
  ),
  rule(
    'glucono-delta-lactone',
    'Glucono delta lactone in chopped meat',
    'p. 569, curing accelerators',
    figure('glucono delta lactone', '%', { max: 0.5, printed: '≤ 8 oz per 100 lb (0.5 %)' }),
    { ...inChopped, isDefault: true, note: 'Genoa salami: 16 oz (1.0 %).' },
  ),
  additive(
    'acid-pyrophosphate',
    'Sodium acid pyrophosphate in frankfurters',
    'p. 569, curing accelerators',
    figure('sodium acid pyrophosphate on the meat', '%', { max: 0.5, printed: '≤ 8 oz per 100 lb (0.5 %)' }),
    { ...only('frankfurter', 'cooked sausage'), isDefault: true, note: 'Also at most 0.5 % of the finished product.' },
  ),
  additive('phosphate', 'Phosphate in the meat food product', 'pp. 576-577, phosphates', curing.phosphate, {
    isDefault: true,
    note: 'Printed on the product; judged on the meat block, which is never heavier: the strict side.',
  }),
  additive(
    'phosphate-pickle',
    'Phosphate in the pickle at 10 % pump',
    'pp. 576-577, phosphates',
    figure('phosphate in the pickle', '%', { max: 5 }),
    { ...inPickled, isDefault: true, note: 'Only a clear solution may be injected.' },
  ),
  additive(
    'phosphate-poultry',
    'Phosphate in poultry',
    'pp. 576-577, phosphates',
    figure('phosphate in the total product', '%', { max: 0.5 }),
    { ...only('cooked poultry', 'cooked cured poultry'), isDefault: true },
  ),
  additive(
    'sodium-hydroxide',
    'Sodium hydroxide to phosphate',
    'pp. 576-577, phosphates',
    figure('sodium hydroxide to phosphate', 'ratio', { max: 0.25, printed: '≤ 1 : 4' }),
    { isDefault: true },
  ),
  additive(
    'phosphate-fresh-sausage',
    'Phosphate in fresh sausage and ground beef: none',
    'phosphates',
    figure('phosphate', '%', { max: 0 }),
    {
      ...only(
        'fresh pork sausage',
        'whole hog sausage',
        'fresh beef sausage',
        'breakfast sausage',
        'Italian sausage',
        'ground beef',
        'patties',
      ),
      known: 'from memory',
    },
  ),
  from(handbook, 'curing')(
    'nitrite-least-refrigerated',
    'Least nitrite in refrigerated cured product',
    'ch. 3, p. 12',
    figure('ingoing sodium nitrite', 'ppm', { min: 120 }),
    { ...cured, note: 'Unless pH, water activity or heat makes it safe.' },
  ),
  from(handbook, 'curing')(
    'nitrite-least-shelf-stable',
    'Nitrite that is useful where the product is shelf stable otherwise',
    'ch. 3, p. 12',
    figure('ingoing sodium nitrite', 'ppm', { min: 40, advises: true }),
    {
      ...only('dry sausage', 'semi-dry sausage', 'jerky'),
      note: 'No regulatory minimum; 40 ppm “is useful in that it has some preservative effect”. It fails no lot.',
    },
  ),
];
