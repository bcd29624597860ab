import { useParams } from '@tanstack/react-router';
import { NotThere } from './drafting/not-there';
import { StepView } from './drafting/step-view';
import { WithDraft } from './drafting/with-draft';
import { useSay } from '../../ui/voice';

export function PlanStepPage() {
  const say = useSay('plan-drafts');
  const { productId, stepId } = useParams({ from: '/products/$productId/plan/steps/$stepId' });
  return (
    <WithDraft productId={productId}>
      {(drafting) => {
        const step = drafting.content.steps.find((each) => each.stepId === stepId);
        return step ? (
          <StepView key={stepId} drafting={drafting} step={step} />
        ) : (
          <NotThere title={say('step-not-there')} productId={productId} />
        );
      }}
    </WithDraft>
  );
}
