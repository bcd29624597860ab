import { listShipments, type ReplyOf } from '@larderbook/contracts';
import { useEarlier } from '../../api/earlier';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';
import { ShipmentSheet } from './shipments/shipment-sheet';
import type { Shipment } from './shipments/shipment';
import { ShippingFrame } from './shipping-frame';

export function ShipmentsPage() {
  const say = useSay('shipping');
  const { mayRecord } = useShop();
  return (
    <ShippingFrame
      title={say('shipments')}
      actions={
        mayRecord && (
          <LinkButton look="primary" to="/shipping/new">
            {say('ship')}
          </LinkButton>
        )
      }
    >
      <Shipments />
    </ShippingFrame>
  );
}

function Shipments() {
  const say = useSay('shipping');
  const sayShared = useSay('shared');
  const { rows, error, refetch, isFetching, more } = useEarlier(listShipments, {}, reading);
  if (!rows) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;

  const shipments = rows.toSorted((a, b) => Date.parse(b.made.at) - Date.parse(a.made.at) || b.number - a.number);
  if (shipments.length === 0) return <EmptyState title={say('none-yet')}>{say('leave-once-signed')}</EmptyState>;

  return (
    <>
      <ShipmentSheet shipments={shipments} />
      {more && (
        <Button wide busy={isFetching && sayShared('loading')} onClick={more}>
          {say('earlier')}
        </Button>
      )}
    </>
  );
}

const reading = {
  rowsOf: ({ shipments }: ReplyOf<typeof listShipments>) => shipments,
  idOf: ({ shipmentId }: Shipment) => shipmentId,
  at: ({ made }: Shipment) => made.at,
};
