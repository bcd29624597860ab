import { showPlan } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { PlanView } from './document/plan-view';

export function PlanPage() {
  const { planId } = useParams({ from: '/plans/$planId' });
  const { data: plan, error, refetch } = useQuery(ask(showPlan, { planId }));
  if (error && !plan) return <PageProblem error={error} onRetry={() => void refetch()} />;
  if (!plan) return <Loading />;
  return <PlanView key={plan.planId} plan={plan} />;
}
