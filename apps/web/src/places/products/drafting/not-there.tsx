import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { useSay } from '../../../ui/voice';

/** The draft, or its page, is not on this device any more. */
export function NotThere({ title, productId }: { title: string; productId: string }) {
  const say = useSay('plan-drafts');
  return (
    <EmptyState
      title={title}
      action={
        <LinkButton to="/products/$productId/plan" params={{ productId }}>
          {say('go-to-plan')}
        </LinkButton>
      }
    >
      <p>{say('kept-elsewhere')}</p>
    </EmptyState>
  );
}
