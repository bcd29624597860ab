import { useFigures, useSay } from '../../../ui/voice';
import type { DeliveryDraft, DeliveryStep } from './delivery-draft';
import css from './so-far.module.css';

/** One line, so that the keypad stays in sight. */
export function SoFar({ draft, steps }: { draft: DeliveryDraft; steps: DeliveryStep[] }) {
  const say = useSay('receiving');
  const { quantity } = useFigures();
  if (steps.length === 0) return null;
  const answerTo = (step: DeliveryStep): string => {
    if (step === 'item') return draft.item?.name ?? '';
    if (step === 'supplier') return draft.supplier?.name ?? '';
    return step === 'weight' && draft.weight ? quantity(draft.weight) : say('lot-of-label', { lot: draft.label.supplierLot });
  };
  return (
    <ol className={css.answers} aria-label={say('so-far')}>
      {steps.map((step) => (
        <li key={step}>{answerTo(step)}</li>
      ))}
    </ol>
  );
}
