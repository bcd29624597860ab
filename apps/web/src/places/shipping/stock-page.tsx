import { listPackings } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';
import { ShippingFrame } from './shipping-frame';
import { StockTable } from './stock/stock-table';

export function StockPage() {
  const say = useSay('shipping');
  const { mayRecord } = useShop();
  const { data, error, refetch } = useQuery(ask(listPackings, { left: 'some' }));
  return (
    <ShippingFrame
      title={say('stock')}
      under={say('first-use-by')}
      actions={
        <>
          <LinkButton to="/reviews">{say('to-review')}</LinkButton>
          {mayRecord && (
            <LinkButton look="primary" to="/shipping/new">
              {say('ship')}
            </LinkButton>
          )}
        </>
      }
    >
      {data && <StockTable packings={data.packings} />}
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
    </ShippingFrame>
  );
}
