import type { ReplyOf, listProducts } from '@larderbook/contracts';

export type ProductHead = ReplyOf<typeof listProducts>['products'][number];

type Missing = 'needs-both' | 'needs-formula' | 'needs-plan';

export function whatIsMissing(product: Pick<ProductHead, 'formulaVersion' | 'planInForce'>): Missing | undefined {
  const { formulaVersion, planInForce } = product;
  if (formulaVersion === undefined && planInForce === undefined) return 'needs-both';
  if (formulaVersion === undefined) return 'needs-formula';
  if (planInForce === undefined) return 'needs-plan';
  return undefined;
}
