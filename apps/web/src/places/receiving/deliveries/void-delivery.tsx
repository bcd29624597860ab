import type { Receipt } from '@larderbook/contracts';
import { useVoiding } from '../../../outbox/use-voiding';
import { KeptDialog } from '../../../ui/kept-dialog';
import { VoidDialog } from '../../../ui/why-dialog';

/** Voids a delivery that never came, or was entered twice. */
export function VoidDelivery({ receipt: { code, rowId }, onClose }: { receipt: Receipt; onClose: () => void }) {
  const voiding = useVoiding('receipt', rowId, `Delivery ${code}`);
  const title = `Void delivery ${code}`;
  if (voiding.saved) return <KeptDialog title={title} state={voiding.saved.state} recorded="It is voided." onClose={onClose} />;
  return (
    <VoidDialog title={title} voiding={voiding} onClose={onClose}>
      <p>Why is it voided? It stays in the list, struck through, with this reason.</p>
    </VoidDialog>
  );
}
