import type { Trace } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { useSay } from '../../ui/voice';

/** A supplier recalls the number, not the delivery. */
export function SameNumber({ trace: { start, suppliers } }: { trace: Trace }) {
  const say = useSay('trace');
  const [lot] = suppliers.flatMap(({ receipts }) => receipts.filter(({ code }) => code === start.code));
  if (!lot) return null;
  return (
    <p>
      <LinkButton to="/trace/supplier-lot" search={{ lot: lot.supplierLot }}>
        {say('all-of-number', { lot: lot.supplierLot })}
      </LinkButton>
    </p>
  );
}
