import { listShipments } from '@larderbook/contracts';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
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
  const [before, setBefore] = useState<string>();
  const [later, setLater] = useState<Shipment[]>([]);
  const { data, error, refetch, isFetching } = useQuery({
    ...ask(listShipments, { before }),
    placeholderData: keepPreviousData,
  });
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;

  const known = new Map([...later, ...data.shipments].map((shipment) => [shipment.shipmentId, shipment]));
  const shipments = [...known.values()].sort((a, b) => Date.parse(b.made.at) - Date.parse(a.made.at) || b.number - a.number);
  if (shipments.length === 0) return <EmptyState title={say('none-yet')}>{say('leave-once-signed')}</EmptyState>;

  const earlier = () => {
    setLater(shipments);
    setBefore(shipments.at(-1)?.made.at);
  };
  return (
    <>
      <ShipmentSheet shipments={shipments} />
      {data.more && (
        <Button wide busy={isFetching && sayShared('loading')} onClick={earlier}>
          {say('earlier')}
        </Button>
      )}
    </>
  );
}
