import type { processes, ReplyOf, listProducts, species } from '@larderbook/contracts';

export type ProductHead = ReplyOf<typeof listProducts>['products'][number];
export type Process = (typeof processes)[number];
type Species = (typeof species)[number];

export const processWords: Record<Process, string> = {
  'cured smoked cooked': 'Cured, smoked and cooked',
  'cook-chill': 'Cooked and chilled',
  roast: 'Roast',
  'cured dried': 'Cured and dried',
  fresh: 'Fresh',
  other: 'Another way',
};

export const speciesWords: Record<Species, string> = {
  pork: 'Pork',
  beef: 'Beef',
  chicken: 'Chicken',
  turkey: 'Turkey',
  'other poultry': 'Other poultry',
  lamb: 'Lamb',
  game: 'Game',
  none: 'No meat',
};

/** What a product still needs before a lot of it can be started; nothing when it is ready. */
export function whatIsMissing(product: Pick<ProductHead, 'formulaVersion' | 'planInForce'>): string | undefined {
  const { formulaVersion, planInForce } = product;
  if (formulaVersion === undefined && planInForce === undefined) return 'Write its formula, then adopt a plan';
  if (formulaVersion === undefined) return 'Write its formula';
  if (planInForce === undefined) return 'Adopt a plan';
  return undefined;
}
