import { useVoiding } from '../../../outbox/use-voiding';
import { KeptDialog } from '../../../ui/kept-dialog';
import { VoidDialog } from '../../../ui/why-dialog';
import type { Shipment } from './shipment';

/** Voids a shipment that never left: its packages are back in the stock. */
export function VoidShipment({ shipment: { number, rowId }, onClose }: { shipment: Shipment; onClose: () => void }) {
  const voiding = useVoiding('shipment', rowId, `Shipment ${number}`);
  const title = `Void shipment ${number}`;
  if (voiding.saved)
    return <KeptDialog title={title} state={voiding.saved.state} recorded="It is voided. Its packages are back." onClose={onClose} />;
  return (
    <VoidDialog title={title} voiding={voiding} onClose={onClose}>
      <p>Why is it voided? It stays in the list, struck through, and its packages are back in the stock.</p>
    </VoidDialog>
  );
}
