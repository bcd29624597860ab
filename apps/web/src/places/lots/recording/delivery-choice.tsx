import { useShop } from '../../../api/use-shop';
import { ChoiceField } from '../../../ui/choice-field';
import { sayGrams } from '../say/say-grams';
import type { Delivery } from './use-delivery';

/** Which delivery an ingredient is taken from. */
export function DeliveryChoice({ delivery: { all, chosen, choose }, onChosen }: { delivery: Delivery; onChosen: () => void }) {
  const { units } = useShop();
  return (
    <ChoiceField
      label="Which delivery?"
      value={chosen?.receiptId}
      choices={all.map((receipt) => ({
        value: receipt.receiptId,
        name: receipt.code,
        detail: `${receipt.supplier.name}, lot ${receipt.supplierLot}, ${sayGrams(receipt.leftGrams, units)} left`,
      }))}
      onChange={(receiptId) => {
        choose(receiptId);
        onChosen();
      }}
    />
  );
}
