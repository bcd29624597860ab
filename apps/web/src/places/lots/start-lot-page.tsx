import { listProducts, type ReplyOf } from '@larderbook/contracts';
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
import { StartLot } from './start-lot';

export type ProductHead = ReplyOf<typeof listProducts>['products'][number];

/** Starting a lot: which product, and one tap. */
export function StartLotPage() {
  const { data, error, refetch } = useQuery(ask(listProducts, {}));
  const [product, setProduct] = useState<ProductHead>();
  return (
    <Stack>
      <PageHeader title="Start a lot" over="Lots" under={product ? sayVersions(product) : 'Which product?'} />
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
  if (error && !products) return <Problem error={error} onRetry={onRetry} />;
  if (!products) return <Loading />;
  if (products.length === 0) {
    return (
      <EmptyState title="No product yet" action={<LinkButton to="/products">Products</LinkButton>}>
        A product needs a formula and an adopted plan; then its lots start here.
      </EmptyState>
    );
  }
  return (
    <Tiles
      label="Products"
      tiles={products.map((product) => ({
        key: product.productId,
        title: product.name,
        lines: [sayVersions(product)],
        onTap: () => onChoose(product),
      }))}
    />
  );
}

/** "Formula 3, plan 2 in force", or what is still missing. */
export function sayVersions({ formulaVersion, planInForce }: ProductHead): string {
  const formula = formulaVersion === undefined ? 'no formula yet' : `formula ${formulaVersion}`;
  const plan = planInForce === undefined ? 'no plan adopted' : `plan ${planInForce} in force`;
  return `${formula}, ${plan}`;
}
