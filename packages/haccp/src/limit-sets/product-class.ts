/** What a product is, as far as limits depend on it. */
export const productClasses = [
  'cooked sausage',
  'frankfurter',
  'luncheon meat',
  'smoked pork sausage',
  'fresh pork sausage',
  'whole hog sausage',
  'fresh beef sausage',
  'breakfast sausage',
  'Italian sausage',
  'ground beef',
  'patties',
  'dry sausage',
  'semi-dry sausage',
  'jerky',
  'ham, pumped',
  'ham, immersed',
  'ham, Wiltshire',
  'dry-cured ham',
  'bacon, pumped',
  'bacon, immersed',
  'bacon, dry-cured',
  'bacon, Wiltshire',
  'roast beef',
  'cooked whole muscle',
  'cooked poultry',
  'cooked cured poultry',
  'cook-chill dish',
  'sterilised cured meat',
  'baby food',
] as const;
export type ProductClass = (typeof productClasses)[number];

/** Chopped and cured: the base of every figure per 100 lb of chopped meat. */
export const chopped: readonly ProductClass[] = [
  'cooked sausage',
  'frankfurter',
  'luncheon meat',
  'smoked pork sausage',
  'dry sausage',
  'semi-dry sausage',
  'jerky',
];
export const pickledHams: readonly ProductClass[] = ['ham, pumped', 'ham, immersed', 'ham, Wiltshire'];
export const pumpedOrImmersed: readonly ProductClass[] = [...pickledHams, 'cooked cured poultry'];
export const bacon: readonly ProductClass[] = ['bacon, pumped', 'bacon, immersed', 'bacon, dry-cured', 'bacon, Wiltshire'];
export const freshSausage: readonly ProductClass[] = [
  'fresh pork sausage',
  'whole hog sausage',
  'fresh beef sausage',
  'breakfast sausage',
  'Italian sausage',
];
export const uncookedCured: readonly ProductClass[] = ['dry sausage', 'semi-dry sausage', 'dry-cured ham', 'jerky'];
export const cookedMeat: readonly ProductClass[] = [
  'cooked sausage',
  'frankfurter',
  'luncheon meat',
  'smoked pork sausage',
  ...pickledHams,
  'cooked whole muscle',
  'roast beef',
  'cook-chill dish',
];
export const cookedPoultryProducts: readonly ProductClass[] = ['cooked poultry', 'cooked cured poultry'];
export const cookedProducts: readonly ProductClass[] = [...cookedMeat, ...cookedPoultryProducts];
export const curedCooked: readonly ProductClass[] = [
  'cooked sausage',
  'frankfurter',
  'luncheon meat',
  'smoked pork sausage',
  ...pickledHams,
  'cooked cured poultry',
];
/** Tables of fat differ between these; a product with any poultry in it is cooked as poultry. */
export const heatTreatedCured: readonly ProductClass[] = [...curedCooked, ...bacon];
export const sausages: readonly ProductClass[] = [
  'cooked sausage',
  'frankfurter',
  'luncheon meat',
  'smoked pork sausage',
  ...freshSausage,
];
