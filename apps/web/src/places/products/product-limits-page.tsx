import { showProductLimits } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { Caution } from '../../ui/caution';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { Basis } from './applying/basis';
import { LimitsList } from './applying/limits-list';
import { NotSaid } from './applying/not-said';
import { BackToProduct } from './back-to-product';
import { WithProduct } from './with-product';
import { useSay } from '../../ui/voice';

export function ProductLimitsPage() {
  const say = useSay('product-limits');
  const { productId } = useParams({ from: '/products/$productId/limits' });
  const { data: limits, error, refetch } = useQuery(ask(showProductLimits, { productId }));
  return (
    <WithProduct productId={productId}>
      {(product) => (
        <Stack gap="wide">
          <PageHeader over={<BackToProduct productId={productId} name={product.name} />} title={say('title')} under={say('under')} />
          {!limits && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
          {limits && (
            <>
              <Basis limits={limits} />
              <NotSaid product={product} limits={limits} />
              <Caution>
                <p>{say('caution-limits')}</p>
              </Caution>
              {limits.limits.length > 0 && <LimitsList limits={limits} />}
            </>
          )}
        </Stack>
      )}
    </WithProduct>
  );
}
