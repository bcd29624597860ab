import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { DeliveryList } from './deliveries/delivery-list';
import { ReceivingFrame } from './receiving-frame';

/** What came in at the door, newest first, with what is left of it. */
export function ReceivingPage() {
  const { mayRecord } = useShop();
  const record = mayRecord && (
    <LinkButton look="primary" to="/receiving/new">
      Record a delivery
    </LinkButton>
  );
  return (
    <ReceivingFrame title="Deliveries" actions={record}>
      <DeliveryList record={record} />
    </ReceivingFrame>
  );
}
