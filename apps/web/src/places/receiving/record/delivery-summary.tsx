import { codeOf } from '@larderbook/messages';
import type { ReactNode } from 'react';
import { Facts } from '../../../ui/facts';
import { useFigures, useSay } from '../../../ui/voice';
import type { DeliveryDraft } from './delivery-draft';

type DeliverySummaryProps = { draft: DeliveryDraft; came: ReactNode };

export function DeliverySummary({ draft: { item, supplier, label, weight, temperature }, came }: DeliverySummaryProps) {
  const say = useSay('receiving');
  const sayLimits = useSay('limits');
  const { number, quantity } = useFigures();
  return (
    <Facts
      facts={[
        { name: say('item'), value: item?.name },
        { name: say('weight'), value: weight && quantity(weight) },
        { name: say('supplier'), value: supplier?.name },
        { name: say('their-lot'), value: label.supplierLot },
        ...(item?.substance ? [{ name: sayLimits(codeOf('substance', item.substance)), value: `${number(label.fraction)} %` }] : []),
        ...(temperature ? [{ name: say('temperature'), value: temperature === 'none' ? say('not-measured') : quantity(temperature) }] : []),
        { name: say('came'), value: came },
      ]}
    />
  );
}
