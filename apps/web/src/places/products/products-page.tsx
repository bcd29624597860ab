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

/** Every product with the formula and the plan its next lot is made by. */
export function ProductsPage() {
  const { isOwner } = useShop();
  const navigate = useNavigate();
  const [isAdding, setAdding] = useState(false);
  const add = isOwner && (
    <Button look="primary" onClick={() => setAdding(true)}>
      Add a product
    </Button>
  );
  return (
    <Stack>
      <PageHeader title="Products" under={isOwner ? undefined : <OwnerOnly />} actions={add} />
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
  const { data, error, refetch } = useQuery(ask(listProducts, {}));
  if (error && !data) return <Problem error={error} onRetry={() => void refetch()} />;
  if (!data) return <Loading />;
  if (data.products.length === 0) {
    return (
      <EmptyState title="No product yet" action={add}>
        <p>A product has a formula, by which it is weighed, and a plan, by which it is judged. With both, its lots can be started.</p>
      </EmptyState>
    );
  }
  return <ProductsList products={data.products} />;
}
