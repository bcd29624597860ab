import type { Product, ProductLimits } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { ProductDialog } from '../described/product-dialog';
import { useShop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';

type NotSaidProps = { product: Product; limits: ProductLimits };

export function NotSaid({ product, limits: { productClass, jurisdiction, set } }: NotSaidProps) {
  const say = useSay('product-limits');
  const { isOwner } = useShop();
  const [isCorrecting, setCorrecting] = useState(false);
  const close = () => setCorrecting(false);
  const toShop = <LinkButton to="/shop">{say(isOwner ? 'say-for-shop' : 'see-shop')}</LinkButton>;
  return (
    <>
      {!jurisdiction && (
        <EmptyState title={say('jurisdiction-unsaid')} action={toShop}>
          <p>{say('jurisdiction-why')}</p>
        </EmptyState>
      )}
      {jurisdiction && !set && (
        <EmptyState title={say('edition-unknown')} action={toShop}>
          <p>{say('edition-why')}</p>
        </EmptyState>
      )}
      {!productClass && (
        <EmptyState
          title={say('class-unsaid')}
          action={
            isOwner && (
              <Button look="primary" onClick={() => setCorrecting(true)}>
                {say('say-class')}
              </Button>
            )
          }
        >
          <p>
            {say('class-why')} {!isOwner && say('owner-says')}
          </p>
        </EmptyState>
      )}
      {isCorrecting && <ProductDialog corrects={product} onSaved={close} onClose={close} />}
    </>
  );
}
