import { listItems } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
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
import { useSay } from '../../ui/voice';

export function FormulaPage() {
  const say = useSay('formulas');
  const { productId } = useParams({ from: '/products/$productId/formula' });
  const { isOwner } = useShop();
  const { data, error, refetch } = useQuery(ask(listItems, {}));
  return (
    <WithProduct productId={productId}>
      {(product, plan) => (
        <Stack>
          <PageHeader
            over={<BackToProduct productId={product.productId} name={product.name} />}
            title={say('numbered', { version: (product.formulas[0]?.version ?? 0) + 1 })}
            under={say('earlier-stay')}
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
  const say = useSay('formulas');
  return (
    <EmptyState
      title={say('no-item')}
      action={
        <LinkButton to="/receiving" look="primary">
          {say('go-to-receiving')}
        </LinkButton>
      }
    >
      <p>{say('items-first')}</p>
    </EmptyState>
  );
}
