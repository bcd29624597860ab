import type { Receipt } from '@larderbook/contracts';
import { useVoiding } from '../../../outbox/use-voiding';
import { KeptDialog } from '../../../ui/kept-dialog';
import { VoidDialog } from '../../../ui/why-dialog';
import { useSay } from '../../../ui/voice';

export function VoidDelivery({ receipt: { code, rowId }, onClose }: { receipt: Receipt; onClose: () => void }) {
  const say = useSay('receiving');
  const voiding = useVoiding('receipt', rowId, say('delivery-of', { code }));
  const title = say('void-delivery', { code });
  if (voiding.saved) return <KeptDialog title={title} state={voiding.saved.state} recorded={say('is-voided')} onClose={onClose} />;
  return (
    <VoidDialog title={title} voiding={voiding} onClose={onClose}>
      <p>{say('why-voided')}</p>
    </VoidDialog>
  );
}
