import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../ui/button';
import { Facts } from '../../ui/facts';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { FormulaSection } from './formula/formula-section';
import { OwnerOnly } from './owner-only';

import { PlanSection } from './described/plan-section';
import { ProductDialog } from './described/product-dialog';
import { Readiness } from './described/readiness';
import { whatIsMissing } from './described/product-words';
import { useShop } from '../../api/use-shop';
import { WithProduct } from './with-product';
import { useSay } from '../../ui/voice';
import { codeOf } from '@larderbook/messages';

export function ProductPage() {
  const say = useSay('products');
  const sayLimits = useSay('limits');
  const { productId } = useParams({ from: '/products/$productId' });
  const { isOwner, mayRecord } = useShop();
  const [isCorrecting, setCorrecting] = useState(false);
  return (
    <WithProduct productId={productId}>
      {(product, plan) => {
        return (
          <Stack gap="wide">
            <Stack>
              <PageHeader
                over={<Link to="/products">{say('products')}</Link>}
                title={product.name}
                under={<Readiness product={product} note={say('no-lot-before')} />}
                actions={
                  <>
                    <LinkButton to="/products/$productId/limits" params={{ productId: product.productId }}>
                      {say('limits-that-apply')}
                    </LinkButton>
                    {isOwner && <Button onClick={() => setCorrecting(true)}>{say('correct-these-facts')}</Button>}
                    {!whatIsMissing(product) && mayRecord && <LinkButton to="/lots/new">{say('start-a-lot')}</LinkButton>}
                  </>
                }
              />
              {!isOwner && <OwnerOnly />}
              <Facts
                facts={[
                  { name: say('code'), value: product.code },
                  { name: say('made-by'), value: say(codeOf('process', product.process)) },
                  { name: say('of-species'), value: say(codeOf('species', product.species)) },
                  {
                    name: say('class'),
                    value: product.productClass ? sayLimits(codeOf('class', product.productClass)) : say('not-said-yet'),
                  },
                  { name: say('use-by'), value: say('days-from-packing', { days: product.useByDays }) },
                  { name: say('storage'), value: product.storage || say('not-written-yet') },
                ]}
              />
            </Stack>
            <FormulaSection product={product} plan={plan} />
            <PlanSection product={product} />
            {isCorrecting && <ProductDialog corrects={product} onSaved={() => setCorrecting(false)} onClose={() => setCorrecting(false)} />}
          </Stack>
        );
      }}
    </WithProduct>
  );
}
