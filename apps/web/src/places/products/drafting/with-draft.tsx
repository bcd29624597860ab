import type { PlanContent } from '@larderbook/contracts';
import type { ReactNode } from 'react';
import type { FieldErrors } from '../../../api/check';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { OwnerOnly } from '../owner-only';
import { useShop } from '../../../api/use-shop';
import { NotThere } from './not-there';
import { checkPlan, edited, usePlanDraft, type PlanDraft } from './plan-draft';
import { useSay } from '../../../ui/voice';

export type Drafting = {
  productId: string;
  draft: PlanDraft;
  content: PlanContent;
  errors: FieldErrors;
  change: (content: PlanContent) => void;
  keep: (draft: PlanDraft | undefined) => void;
};

type WithDraftProps = { productId: string; children: (drafting: Drafting) => ReactNode; begin?: ReactNode };

/** Every change is kept at once. */
export function WithDraft({ productId, children, begin }: WithDraftProps) {
  const say = useSay('plan-drafts');
  const { isOwner } = useShop();
  const { draft, keep } = usePlanDraft(productId);
  if (!isOwner) return <OnlyForTheOwner productId={productId} />;
  if (!draft) return <>{begin ?? <NotThere title={say('none-written')} productId={productId} />}</>;
  const errors = draft.tried ? (checkPlan(draft, productId).errors ?? {}) : {};
  const change = (content: PlanContent) => keep(edited(draft, content));
  return <>{children({ productId, draft, content: draft.content, errors, keep, change })}</>;
}

function OnlyForTheOwner({ productId }: { productId: string }) {
  const say = useSay('plan-drafts');
  return (
    <EmptyState
      title={say('owner-writes')}
      action={
        <LinkButton to="/products/$productId" params={{ productId }}>
          {say('read-in-force')}
        </LinkButton>
      }
    >
      <OwnerOnly />
    </EmptyState>
  );
}
