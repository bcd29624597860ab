import type { Plan } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { Button } from '../../../ui/button';
import { draftOfPlan, usePlanDraft } from './plan-draft';
import { useSay } from '../../../ui/voice';

export function NextVersion({ plan }: { plan: Plan }) {
  const say = useSay('plan-drafts');
  const { productId } = plan;
  const { draft, keep } = usePlanDraft(productId);
  const navigate = useNavigate();
  const go = () => {
    if (!draft) keep(draftOfPlan(plan));
    void navigate({ to: '/products/$productId/plan', params: { productId } });
  };
  return <Button onClick={go}>{say(draft ? 'go-on' : 'write-next')}</Button>;
}
