import { listItems } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { BackToProduct } from './back-to-product';
import { WriteFormula } from './formula/write-formula';
import { OwnerOnly } from './owner-only';
import { useShop } from '../../api/use-shop';
import { WithProduct } from './with-product';

/** Writing the next version of a product’s formula. */
export function FormulaPage() {
  const { isOwner } = useShop();
  const { data, error, refetch } = useQuery(ask(listItems, {}));
  return (
    <WithProduct>
      {(product, plan) => (
        <Stack>
          <PageHeader
            over={<BackToProduct productId={product.productId} name={product.name} />}
            title={`Formula ${(product.formulas[0]?.version ?? 0) + 1}`}
            under="Earlier versions stay with the lots that were made by them."
          />
          {!isOwner && <OwnerOnly />}
          {isOwner && !data && error && <Problem error={error} onRetry={() => void refetch()} />}
          {isOwner && !data && !error && <Loading />}
          {isOwner && data?.items.length === 0 && <NoItems />}
          {isOwner && data && data.items.length > 0 && <WriteFormula product={product} items={data.items} plan={plan} />}
        </Stack>
      )}
    </WithProduct>
  );
}

function NoItems() {
  return (
    <EmptyState
      title="No item yet"
      action={
        <LinkButton to="/receiving" look="primary">
          Go to Receiving
        </LinkButton>
      }
    >
      <p>A formula names meats and ingredients. Write down in Receiving what you buy; then they can be chosen here.</p>
    </EmptyState>
  );
}
