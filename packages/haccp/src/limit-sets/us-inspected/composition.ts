import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { pickledHams, sausages, type ProductClass } from '../product-class';
import { figure, from } from '../write-row';
import { ingredients, standards } from './works';

const standard = from(standards, 'composition');
const rule = from(ingredients, 'additive');
const only = (...among: ProductClass[]): { conditions: Condition[] } => ({ conditions: [{ kind: 'product', among }] });
const read = { known: 'read in the source' } as const;
const copied = { known: 'second hand' } as const;
const fat = (max: number) => figure('fat', '%', { max });
const waterOfAll = (max: number) => figure('added water, of all ingredients', '%', { max });

/** 9 CFR 319: what a product may be made of; and the binders, antioxidants and dips of 424.21(c). */
export const compositionRows: readonly LimitRow[] = [
  standard('fat-fresh-pork-sausage', 'Fat in fresh pork sausage', '319.141', fat(50), {
    ...only('fresh pork sausage'),
    ...read,
    isDefault: true,
  }),
  standard('water-fresh-pork-sausage', 'Water in fresh pork sausage', '319.141', waterOfAll(3), {
    ...only('fresh pork sausage'),
    ...read,
    isDefault: true,
  }),
  standard('fat-whole-hog-sausage', 'Fat in whole hog sausage', '319.144', fat(50), {
    ...only('whole hog sausage'),
    ...read,
    isDefault: true,
  }),
  standard('water-whole-hog-sausage', 'Water in whole hog sausage', '319.144', waterOfAll(3), {
    ...only('whole hog sausage'),
    ...read,
    isDefault: true,
  }),
  standard('fat-fresh-beef-sausage', 'Fat in fresh beef sausage', '319.142', fat(30), only('fresh beef sausage')),
  standard(
    'water-fresh-beef-sausage',
    'Water in fresh beef sausage',
    '319.142',
    waterOfAll(3),
    only('fresh beef sausage'),
  ),
  standard('fat-breakfast-sausage', 'Fat in breakfast sausage', '319.143', fat(50), only('breakfast sausage')),
  standard(
    'water-breakfast-sausage',
    'Water in breakfast sausage',
    '319.143',
    waterOfAll(3),
    only('breakfast sausage'),
  ),
  standard('fat-italian-sausage', 'Fat in Italian sausage', '319.145', fat(35), only('Italian sausage')),
  standard('meat-italian-sausage', 'Meat in Italian sausage', '319.145', figure('meat', '%', { min: 85 }), {
    ...only('Italian sausage'),
    note: 'Nitrite only where it is named “cured”.',
  }),
  standard('water-italian-sausage', 'Water in Italian sausage', '319.145', waterOfAll(3), only('Italian sausage')),
  standard(
    'fat-smoked-pork-sausage',
    'Trimmable fat in smoked pork sausage',
    '319.160',
    figure('trimmable fat', '%', { max: 50 }),
    { ...only('smoked pork sausage'), ...copied },
  ),
  standard(
    'water-uncooked-sausage',
    'Water in uncooked sausage in general',
    '319.140',
    figure('added water, of the formula', '%', { max: 3 }),
    { ...only('smoked pork sausage'), ...copied },
  ),
  standard(
    'water-cooked-sausage',
    'Added water in cooked sausage',
    '319.140',
    figure('added water (moisture − 4 × protein)', '%', { max: 10 }),
    { ...only('cooked sausage'), ...copied },
  ),
  standard('fat-frankfurter', 'Fat in frankfurters and bologna', '319.180', fat(30), only('frankfurter')),
  standard(
    'fat-and-water-frankfurter',
    'Fat and added water in frankfurters and bologna',
    '319.180',
    figure('fat and added water', '%', { max: 40 }),
    only('frankfurter'),
  ),
  standard('water-luncheon-meat', 'Water in luncheon meat and meat loaf', '319.260-261', waterOfAll(3), {
    ...only('luncheon meat'),
    ...read,
    isDefault: true,
  }),
  standard('fat-ground-beef', 'Fat in ground beef and hamburger', '319.15', fat(30), {
    ...only('ground beef'),
    note: 'No added water, binder or phosphate.',
  }),
  standard(
    'cheek-ground-beef',
    'Cheek meat in ground beef',
    '319.15',
    figure('cheek meat', '%', { max: 25 }),
    only('ground beef'),
  ),
  standard(
    'water-ground-beef',
    'Water in ground beef: none',
    '319.15',
    figure('added water', '%', { max: 0 }),
    only('ground beef'),
  ),
  standard(
    'protein-ham',
    'Protein on a fat-free basis, ham',
    '319.104',
    figure('protein, fat-free', '%', { min: 20.5 }),
    only(...pickledHams),
  ),
  standard(
    'protein-ham-natural-juices',
    'Protein on a fat-free basis, ham with natural juices',
    '319.104',
    figure('protein, fat-free', '%', { min: 18.5 }),
    only(...pickledHams),
  ),
  standard(
    'protein-ham-water-added',
    'Protein on a fat-free basis, ham, water added',
    '319.104',
    figure('protein, fat-free', '%', { min: 17 }),
    only(...pickledHams),
  ),

  rule(
    'binders',
    'Binders and extenders in sausage, single or together',
    'pp. 564-568',
    figure('binders, of the finished product', '%', { max: 3.5 }),
    {
      ...only(...sausages),
      isDefault: true,
      note: 'Isolated soy protein and sodium caseinate count 1.75 times (2 % as 3.5 %).',
    },
  ),
  rule(
    'binder-isolated-soy',
    'Isolated soy protein in sausage',
    'pp. 564-568',
    figure('isolated soy protein', '%', { max: 2 }),
    { ...only(...sausages), isDefault: true },
  ),
  rule('binder-caseinate', 'Sodium caseinate in sausage', 'pp. 564-568', figure('sodium caseinate', '%', { max: 2 }), {
    ...only(...sausages),
    isDefault: true,
  }),
  standard(
    'binder-soy-equivalent',
    'Isolated soy protein that counts as the whole of the binders',
    '319.140',
    figure('isolated soy protein, as much as 3.5 % of the others', '%', { min: 2, max: 2, printed: '≥ 2 % and ≤ 2 %' }),
    { ...only(...sausages), ...copied },
  ),
  rule('binders-chili', 'Binders in chili con carne', 'pp. 564-568', figure('binders', '%', { max: 8 }), {
    ...only('cook-chill dish'),
    isDefault: true,
  }),
  rule(
    'binders-spaghetti',
    'Binders in spaghetti with meat balls',
    'pp. 564-568',
    figure('binders', '%', { max: 12 }),
    { ...only('cook-chill dish'), isDefault: true },
  ),
  rule(
    'tbhq-fresh-sausage',
    'TBHQ in fresh pork or Italian sausage',
    'p. 563',
    figure('TBHQ, of the fat', '%', { max: 0.01 }),
    { ...only('fresh pork sausage', 'Italian sausage'), isDefault: true },
  ),
  rule(
    'tbhq-together-fresh-sausage',
    'TBHQ with BHA or BHT in fresh pork or Italian sausage',
    'p. 563',
    figure('antioxidants together, of the fat', '%', { max: 0.02 }),
    { ...only('fresh pork sausage', 'Italian sausage'), isDefault: true },
  ),
  rule('tbhq-dry-sausage', 'TBHQ in dry sausage', 'p. 563', figure('TBHQ, of the weight', '%', { max: 0.003 }), {
    ...only('dry sausage'),
    isDefault: true,
  }),
  rule(
    'tbhq-together-dry-sausage',
    'TBHQ with BHA or BHT in dry sausage',
    'p. 563',
    figure('antioxidants together, of the weight', '%', { max: 0.006 }),
    { ...only('dry sausage'), isDefault: true },
  ),
  rule('tocopherols', 'Tocopherols alone', 'p. 563', figure('tocopherols, of the fat', '%', { max: 0.03 }), {
    ...only(...sausages),
    isDefault: true,
  }),
  rule(
    'sorbate-dip',
    'Potassium sorbate casing dip against mould',
    'p. 576',
    figure('potassium sorbate in the dip', '%', { max: 10 }),
    { ...only('dry sausage'), isDefault: true },
  ),
  rule(
    'paraben-dip',
    'Propyl paraben casing dip against mould',
    'p. 576',
    figure('propyl paraben in the dip', '%', { max: 3.5 }),
    { ...only('dry sausage'), isDefault: true },
  ),
];
