import type { Disposition } from '@larderbook/contracts';
import { useVoiding } from '../../outbox/use-voiding';
import { usualToVoid, WhyDialog } from '../../ui/why-dialog';
import { By } from './by';
import { KeptDialog } from './kept-dialog';

type VoidDecidedProps = { what: 'disposition' | 'destruction'; amends: string; said: string; onClose: () => void };

/** Voids a decision or the record of a destruction: it stays, struck through, and its product is undecided or held again. */
export function VoidDecided({ what, amends, said, onClose }: VoidDecidedProps) {
  const voiding = useVoiding(what, amends, said);
  if (voiding.saved) return <KeptDialog title="Voided" state={voiding.saved.state} onClose={onClose} />;
  return (
    <WhyDialog
      title={`Void: ${said}`}
      usual={usualToVoid}
      verb="Void"
      busy={voiding.busy && 'Keeping it…'}
      refused={voiding.refused?.words}
      onReason={(reason) => void voiding.strike(reason)}
      onClose={onClose}
    >
      <p>
        Why is it voided? It stays here, struck through, with this reason.{' '}
        {what === 'disposition' ? 'Its product is undecided again, and the hold is back.' : 'Keep the product apart until its destruction is recorded anew.'}
      </p>
    </WhyDialog>
  );
}

export function Voided({ reason, by, at }: NonNullable<Disposition['voided']>) {
  return (
    <p>
      <strong>Voided:</strong> {reason} <By name={by} at={at} />
    </p>
  );
}
