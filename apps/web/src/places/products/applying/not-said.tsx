import type { Product, ProductLimits } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { ProductDialog } from '../described/product-dialog';
import { useShop } from '../../../api/use-shop';

type NotSaidProps = { product: Product; limits: ProductLimits };

/** Which of class, jurisdiction and edition is still to be said, and the way to say it. Nothing when all are. */
export function NotSaid({ product, limits: { productClass, jurisdiction, set } }: NotSaidProps) {
  const { isOwner } = useShop();
  const [isCorrecting, setCorrecting] = useState(false);
  const close = () => setCorrecting(false);
  const toShop = <LinkButton to="/shop">{isOwner ? 'Say it for the establishment' : 'See the establishment'}</LinkButton>;
  return (
    <>
      {!jurisdiction && (
        <EmptyState title="Whose published limits count here was not said" action={toShop}>
          <p>Limits differ from one jurisdiction to the next, and none is assumed. The owner says it once, for all products.</p>
        </EmptyState>
      )}
      {jurisdiction && !set && (
        <EmptyState title="The edition in use is not known to this version" action={toShop}>
          <p>Choose another edition, or update Larderbook.</p>
        </EmptyState>
      )}
      {!productClass && (
        <EmptyState
          title="The class of this product was not said"
          action={
            isOwner && (
              <Button look="primary" onClick={() => setCorrecting(true)}>
                Say its class
              </Button>
            )
          }
        >
          <p>
            Many limits are for one kind of product alone, and none is assumed.
            {!isOwner && ' The owner says it with the product.'}
          </p>
        </EmptyState>
      )}
      {isCorrecting && <ProductDialog corrects={product} onSaved={close} onClose={close} />}
    </>
  );
}
