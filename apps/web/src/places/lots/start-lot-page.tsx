import { listProducts, type ReplyOf } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { Tiles } from '../../ui/tiles';
import { useSay } from '../../ui/voice';
import { StartLot } from './start-lot';

export type ProductHead = ReplyOf<typeof listProducts>['products'][number];

export function StartLotPage() {
  const say = useSay('lots');
  const { data, error, refetch } = useQuery(ask(listProducts, {}));
  const [product, setProduct] = useState<ProductHead>();
  return (
    <Stack>
      <PageHeader title={say('start-a-lot')} over={say('title')} under={product ? versionsOf(product, say) : say('which-product')} />
      {product ? (
        <StartLot product={product} onBack={() => setProduct(undefined)} />
      ) : (
        <Products products={data?.products} error={error} onRetry={() => void refetch()} onChoose={setProduct} />
      )}
    </Stack>
  );
}

type ProductsProps = {
  products: ProductHead[] | undefined;
  error: unknown;
  onRetry: () => void;
  onChoose: (product: ProductHead) => void;
};

function Products({ products, error, onRetry, onChoose }: ProductsProps) {
  const say = useSay('lots');
  if (error && !products) return <Problem error={error} onRetry={onRetry} />;
  if (!products) return <Loading />;
  if (products.length === 0) {
    return (
      <EmptyState title={say('no-product')} action={<LinkButton to="/products">{say('products')}</LinkButton>}>
        {say('product-needs')}
      </EmptyState>
    );
  }
  return (
    <Tiles
      label={say('products')}
      tiles={products.map((product) => ({
        key: product.productId,
        title: product.name,
        lines: [versionsOf(product, say)],
        onTap: () => onChoose(product),
      }))}
    />
  );
}

function versionsOf({ formulaVersion, planInForce }: ProductHead, say: SayOf<'lots'>): string {
  const [formula, plan] = [formulaVersion, planInForce].map((version) => version !== undefined && String(version));
  if (formula) return plan ? say('formula-and-plan', { formula, plan }) : say('formula-no-plan', { formula });
  return plan ? say('plan-no-formula', { plan }) : say('no-formula-no-plan');
}
