import { useVoiding } from '../../outbox/use-voiding';
import { KeptDialog } from '../../ui/kept-dialog';
import { VoidDialog } from '../../ui/why-dialog';
import { useSay } from '../../ui/voice';

type VoidDecidedProps = { what: 'disposition' | 'destruction' | 'action'; amends: string; said: string; onClose: () => void };

/** The part stays, struck through. */
export function VoidDecided({ what, amends, said, onClose }: VoidDecidedProps) {
  const say = useSay('settling');
  const voiding = useVoiding(what, amends, said);
  if (voiding.saved) return <KeptDialog title={say('voided')} state={voiding.saved.state} onClose={onClose} />;
  return (
    <VoidDialog title={say('void-what', { what: said })} voiding={voiding} onClose={onClose}>
      <p>{say(`void-${what}`)}</p>
    </VoidDialog>
  );
}
