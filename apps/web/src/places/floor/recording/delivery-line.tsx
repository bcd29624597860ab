import { useState } from 'react';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { sayGrams } from '../say/say-grams';
import { useShop } from '../use-shop';
import css from './recording.module.css';
import type { Delivery } from './use-delivery';

/** From which delivery an ingredient is taken; changed by tapping it. */
export function DeliveryLine({ delivery: { all, chosen, choose } }: { delivery: Delivery }) {
  const { units } = useShop();
  const [open, setOpen] = useState(false);
  if (!chosen) return <p className={css.flag}>No delivery of this is left, so none is named. Record it under Receiving to have it traced.</p>;
  return (
    <>
      <div className={css.line}>
        <Button look="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>From {chosen.code}, {sayGrams(chosen.leftGrams, units)} left</Button>
      </div>
      {open && (
        <ChoiceField
          label="Which delivery?" value={chosen.receiptId}
          choices={all.map((receipt) => ({ value: receipt.receiptId, name: receipt.code, detail: `${receipt.supplier.name}, lot ${receipt.supplierLot}, ${sayGrams(receipt.leftGrams, units)} left` }))}
          onChange={(receiptId) => {
            choose(receiptId);
            setOpen(false);
          }}
        />
      )}
    </>
  );
}
