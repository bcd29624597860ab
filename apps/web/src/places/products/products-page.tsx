import { listProducts } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { OwnerOnly } from './owner-only';
import { ProductDialog } from './described/product-dialog';
import { ProductsList } from './described/products-list';
import { useShop } from '../../api/use-shop';
import { useSay } from '../../ui/voice';

export function ProductsPage() {
  const say = useSay('products');
  const { isOwner } = useShop();
  const navigate = useNavigate();
  const [isAdding, setAdding] = useState(false);
  const add = isOwner && (
    <Button look="primary" onClick={() => setAdding(true)}>
      {say('add')}
    </Button>
  );
  return (
    <Stack>
      <PageHeader title={say('products')} under={isOwner ? undefined : <OwnerOnly />} actions={add} />
      <Products add={add} />
      {isAdding && (
        <ProductDialog
          onClose={() => setAdding(false)}
          onSaved={(productId) => void navigate({ to: '/products/$productId', params: { productId } })}
        />
      )}
    </Stack>
  );
}

function Products({ add }: { add: React.ReactNode }) {
  const say = useSay('products');
  const { data, error, refetch } = useQuery(ask(listProducts, {}));
  if (error && !data) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!data) return <Loading />;
  if (data.products.length === 0) {
    return (
      <EmptyState title={say('none-yet')} action={add}>
        <p>{say('what-one-has')}</p>
      </EmptyState>
    );
  }
  return <ProductsList products={data.products} />;
}
