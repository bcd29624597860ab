import type { Product } from '@larderbook/contracts';
import { useParams } from '@tanstack/react-router';
import { Button } from '../../ui/button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import { BackToProduct } from './back-to-product';
import { PlanCaution } from './document/plan-caution';
import { BeginPlan } from './drafting/begin-plan';
import { DraftFlow } from './drafting/draft-flow';
import { addStep, emptyStep } from './drafting/edit-plan';
import { HeadFields } from './drafting/head-fields';
import { usePlanDraft, type PlanDraft } from './drafting/plan-draft';
import { SavePlan } from './drafting/save-plan';
import { useGoing } from './drafting/use-going';
import { WithDraft, type Drafting } from './drafting/with-draft';
import { WithProduct } from './with-product';
import { useSay } from '../../ui/voice';

export function PlanDraftPage() {
  const say = useSay('plan-drafts');
  const { productId } = useParams({ from: '/products/$productId/plan' });
  const { keep } = usePlanDraft(productId);
  return (
    <WithProduct productId={productId}>
      {(product) => (
        <Stack gap="wide">
          <PageHeader
            over={<BackToProduct productId={product.productId} name={product.name} />}
            title={say('numbered', { version: (product.plans[0]?.version ?? 0) + 1 })}
            under={say('kept-here')}
          />
          <WithDraft productId={productId} begin={<BeginPlan product={product} onBegin={keep} />}>
            {(drafting) => <Draft drafting={drafting} product={product} />}
          </WithDraft>
        </Stack>
      )}
    </WithProduct>
  );
}

function Draft({ drafting, product }: { drafting: Drafting; product: Product }) {
  const say = useSay('plan-drafts');
  const { draft, content, change, errors, productId } = drafting;
  const going = useGoing(productId);
  const latest = product.plans[0]?.version;
  const begun = ({ basedOn, starter }: PlanDraft) => {
    if (basedOn !== undefined) return say('begun-from-plan', { version: basedOn });
    return starter === undefined ? say('begun-from-nothing') : say('begun-from-starter', { title: starter });
  };
  const add = () => {
    const step = emptyStep();
    change(addStep(content, step));
    void going.toStep(step.stepId);
  };
  return (
    <>
      <Stack>
        <p>
          {begun(draft)}{' '}
          {latest !== undefined && draft.basedOn !== undefined && draft.basedOn !== latest && (
            <strong>{say('not-the-latest', { version: latest })}</strong>
          )}
        </p>
        <HeadFields {...drafting} />
      </Stack>
      <Section title={say('flow-diagram')}>
        <DraftFlow {...drafting} />
        {errors.steps && <p role="alert">{errors.steps}</p>}
        <Button onClick={add}>{say('add-step')}</Button>
      </Section>
      <Section title={say('notes')}>
        <TextArea
          label={say('notes')}
          optional
          hint={say('notes-hint')}
          value={content.notes}
          error={errors.notes}
          onChange={(notes) => change({ ...content, notes })}
        />
      </Section>
      <PlanCaution />
      <SavePlan drafting={drafting} product={product} />
    </>
  );
}
