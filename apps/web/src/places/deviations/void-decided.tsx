import { useVoiding } from '../../outbox/use-voiding';
import { KeptDialog } from '../../ui/kept-dialog';
import { VoidDialog } from '../../ui/why-dialog';

type VoidDecidedProps = { what: 'disposition' | 'destruction' | 'action'; amends: string; said: string; onClose: () => void };

const then: Record<VoidDecidedProps['what'], string> = {
  disposition: 'Its product is undecided again, and the hold is back.',
  destruction: 'Keep the product apart until its destruction is recorded anew.',
  action: 'The deviation asks for a corrective action again, unless there is another.',
};

/** Voids a part of what settles a deviation: it stays, struck through. */
export function VoidDecided({ what, amends, said, onClose }: VoidDecidedProps) {
  const voiding = useVoiding(what, amends, said);
  if (voiding.saved) return <KeptDialog title="Voided" state={voiding.saved.state} onClose={onClose} />;
  return (
    <VoidDialog title={`Void: ${said}`} voiding={voiding} onClose={onClose}>
      <p>Why is it voided? It stays here, struck through, with this reason. {then[what]}</p>
    </VoidDialog>
  );
}
