import { useVoiding } from '../../../outbox/use-voiding';
import { Dialog } from '../../../ui/dialog';
import { VoidDialog } from '../../../ui/why-dialog';
import type { Shipment } from './shipment';

/** Voids a shipment that never left: its packages are back in the stock. */
export function VoidShipment({ shipment: { number, rowId }, onClose }: { shipment: Shipment; onClose: () => void }) {
  const voiding = useVoiding('shipment', rowId, `Shipment ${number}`);
  const title = `Void shipment ${number}`;
  if (voiding.saved)
    return (
      <Dialog title={title} closeLabel="Done" onClose={onClose}>
        <p>{voiding.saved.state === 'sent' ? 'It is voided. Its packages are back.' : 'Kept on this device. It is sent when the connection is back.'}</p>
      </Dialog>
    );
  return (
    <VoidDialog title={title} voiding={voiding} onClose={onClose}>
      <p>Why is it voided? It stays in the list, struck through, and its packages are back in the stock.</p>
    </VoidDialog>
  );
}
