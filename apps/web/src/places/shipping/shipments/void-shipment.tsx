import { useVoiding } from '../../../outbox/use-voiding';
import { KeptDialog } from '../../../ui/kept-dialog';
import { VoidDialog } from '../../../ui/why-dialog';
import { useSay } from '../../../ui/voice';
import type { Shipment } from './shipment';

/** Its packages are back in the stock. */
export function VoidShipment({ shipment: { number, rowId }, onClose }: { shipment: Shipment; onClose: () => void }) {
  const say = useSay('shipping');
  const named = { number: String(number) };
  const voiding = useVoiding('shipment', rowId, say('shipment', named));
  const title = say('void-shipment', named);
  if (voiding.saved) return <KeptDialog title={title} state={voiding.saved.state} recorded={say('is-voided')} onClose={onClose} />;
  return (
    <VoidDialog title={title} voiding={voiding} onClose={onClose}>
      <p>{say('why-voided')}</p>
    </VoidDialog>
  );
}
