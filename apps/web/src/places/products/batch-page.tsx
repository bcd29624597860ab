import { EmptyState } from '../../ui/empty-state';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { BackToProduct } from './back-to-product';
import css from './batch/batch.module.css';
import { WorkOut } from './batch/work-out';
import { WithProduct } from './with-product';

/** Working out a batch by the latest formula of a product. */
export function BatchPage() {
  return (
    <WithProduct>
      {(product) => {
        const [formula] = product.formulas;
        return (
          <Stack>
            <div className={css.onScreen}>
              <PageHeader
                over={<BackToProduct productId={product.productId} name={product.name} />}
                title="Work out a batch"
                under={formula && `By formula ${formula.version}; nothing here is recorded.`}
              />
            </div>
            {formula && <WorkOut product={product} formula={formula} />}
            {!formula && (
              <EmptyState title="No formula yet">
                <p>A batch is worked out by the formula.</p>
              </EmptyState>
            )}
          </Stack>
        );
      }}
    </WithProduct>
  );
}
