import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';

/** A page of a draft, or a draft, that is not on this device any more. */
export function NotThere({ title, productId }: { title: string; productId: string }) {
  return (
    <EmptyState
      title={title}
      action={
        <LinkButton to="/products/$productId/plan" params={{ productId }}>
          Go to the plan
        </LinkButton>
      }
    >
      <p>It was saved or taken away, or it is kept on another device.</p>
    </EmptyState>
  );
}
