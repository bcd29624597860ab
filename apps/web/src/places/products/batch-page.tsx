import { useParams } from '@tanstack/react-router';
import { EmptyState } from '../../ui/empty-state';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { BackToProduct } from './back-to-product';
import css from './batch/batch.module.css';
import { CalculateBatch } from './batch/calculate-batch';
import { WithProduct } from './with-product';
import { useSay } from '../../ui/voice';

export function BatchPage() {
  const say = useSay('batches');
  const { productId } = useParams({ from: '/products/$productId/batch' });
  return (
    <WithProduct productId={productId}>
      {(product) => {
        const [formula] = product.formulas;
        return (
          <Stack>
            <div className={css.onScreen}>
              <PageHeader
                over={<BackToProduct productId={product.productId} name={product.name} />}
                title={say('title')}
                under={formula && say('by-formula', { version: formula.version })}
              />
            </div>
            {formula && <CalculateBatch product={product} formula={formula} />}
            {!formula && (
              <EmptyState title={say('no-formula')}>
                {' '}
                <p>{say('by-the-formula')}</p>
              </EmptyState>
            )}
          </Stack>
        );
      }}
    </WithProduct>
  );
}
