import { massIn } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { ChoiceField } from '../../../ui/choice-field';
import { useSay } from '../../../ui/voice';
import type { Delivery } from './use-delivery';

export function DeliveryChoice({ delivery: { all, chosen, choose }, onChosen }: { delivery: Delivery; onChosen: () => void }) {
  const say = useSay('lot-forms');
  const { units } = useShop();
  return (
    <ChoiceField
      label={say('which-delivery')}
      value={chosen?.receiptId}
      choices={all.map((receipt) => ({
        value: receipt.receiptId,
        name: receipt.code,
        detail: say('supplier-lot-left', {
          supplier: receipt.supplier.name,
          lot: receipt.supplierLot,
          weight: massIn(units, receipt.leftGrams),
        }),
      }))}
      onChange={(receiptId) => {
        choose(receiptId);
        onChosen();
      }}
    />
  );
}
