import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../ui/button';
import { Facts } from '../../ui/facts';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { FormulaSection } from './formula/formula-section';
import { OwnerOnly } from './owner-only';
import { classWords } from './described/class-words';
import { PlanSection } from './described/plan-section';
import { ProductDialog } from './described/product-dialog';
import { Readiness } from './described/readiness';
import { processWords, speciesWords, whatIsMissing } from './described/product-words';
import { useShop } from '../../api/use-shop';
import { WithProduct } from './with-product';

/** One product: what it is, by which formula it is weighed and by which plan it is judged. */
export function ProductPage() {
  const { isOwner, mayRecord } = useShop();
  const [isCorrecting, setCorrecting] = useState(false);
  return (
    <WithProduct>
      {(product, plan) => {
        return (
          <Stack gap="wide">
            <Stack>
              <PageHeader
                over={<Link to="/products">Products</Link>}
                title={product.name}
                under={<Readiness product={product} note="no lot can be started before" />}
                actions={
                  <>
                    <LinkButton to="/products/$productId/limits" params={{ productId: product.productId }}>
                      Limits that apply
                    </LinkButton>
                    {isOwner && <Button onClick={() => setCorrecting(true)}>Correct these facts</Button>}
                    {!whatIsMissing(product) && mayRecord && <LinkButton to="/lots/new">Start a lot</LinkButton>}
                  </>
                }
              />
              {!isOwner && <OwnerOnly />}
              <Facts
                facts={[
                  { name: 'Code', value: product.code },
                  { name: 'Made by', value: processWords[product.process] },
                  { name: 'Species', value: speciesWords[product.species] },
                  { name: 'Class', value: product.productClass ? classWords(product.productClass) : 'not said yet' },
                  {
                    name: 'Use by',
                    value: `${product.useByDays} ${product.useByDays === 1 ? 'day' : 'days'} from packing`,
                  },
                  { name: 'Storage', value: product.storage || 'not written yet' },
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
