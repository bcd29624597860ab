import { showPlan, showProduct, type PlanContent, type Product } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';

type WithProductProps = { productId: string; children: (product: Product, planInForce: PlanContent | undefined) => ReactNode };

export function WithProduct({ productId, children }: WithProductProps) {
  const product = useQuery(ask(showProduct, { productId }));
  const planId = product.data?.plans.find(({ inForce }) => inForce)?.planId;
  const plan = useQuery({ ...ask(showPlan, { planId: planId ?? '' }), enabled: planId !== undefined });

  const missing = [product, ...(planId === undefined ? [] : [plan])].find(({ data }) => data === undefined);
  if (missing?.error) return <PageProblem error={missing.error} onRetry={() => void missing.refetch()} />;
  if (missing || !product.data) return <Loading />;
  return <>{children(product.data, plan.data?.content)}</>;
}
