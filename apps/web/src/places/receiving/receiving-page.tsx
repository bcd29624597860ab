import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { useSay } from '../../ui/voice';
import { DeliveryList } from './deliveries/delivery-list';
import { ReceivingFrame } from './receiving-frame';

export function ReceivingPage() {
  const say = useSay('receiving');
  const { mayRecord } = useShop();
  const record = mayRecord && (
    <LinkButton look="primary" to="/receiving/new">
      {say('record-delivery')}
    </LinkButton>
  );
  return (
    <ReceivingFrame title="deliveries" actions={record}>
      <DeliveryList record={record} />
    </ReceivingFrame>
  );
}
