import type { Receipt } from '@larderbook/contracts';
import { useEntered } from '../../../ui/moment';
import { SheetEntry } from '../../../ui/sheet-entry';
import { SheetLink } from '../../../ui/sheet-link';
import { useSaid } from '../../../ui/use-said';
import { useFigures, useSay } from '../../../ui/voice';
import css from './deliveries.module.css';
import { DeliveryStatus } from './delivery-status';
import { leftOf } from './left-of';

/** A refused delivery is struck through and says why. */
export function DeliveryLine({ receipt }: { receipt: Receipt }) {
  const { receiptId, code, item, weight, temperature, decision, reason, flags, made, corrections, voided } = receipt;
  const isRefused = decision === 'refused' || voided;
  const say = useSay('receiving');
  const sayEntry = useSay('entries');
  const tell = useSaid();
  const { quantity } = useFigures();
  const entered = useEntered({ at: made.at, recordedAt: made.recordedAt });
  const corrected = corrections.at(-1);
  const link = (
    <SheetLink to="/receiving/$receiptId" params={{ receiptId }}>
      {item.name}
    </SheetLink>
  );
  const notes = [
    say('from-lot', { supplier: receipt.supplier.name, lot: receipt.supplierLot }),
    ...flags.map((flag) => sayEntry(flag)),
    decision === 'refused' && reason,
    corrected && say(voided ? 'voided-by' : 'corrected-by', { who: corrected.made.name, reason: tell(corrected.reason) }),
    entered,
  ].filter(Boolean);
  return (
    <SheetEntry
      at={made.at}
      what={isRefused ? <s>{link}</s> : link}
      note={notes.join(' · ')}
      who={`${code} · ${made.name}`}
      verdict={<DeliveryStatus receipt={receipt} />}
      value={
        <span className={css.figures}>
          {isRefused ? <s>{quantity(weight)}</s> : <span>{quantity(weight)}</span>}
          {temperature && <span>{quantity(temperature)}</span>}
          <small>{voided ? undefined : leftOf(receipt, say)}</small>
        </span>
      }
    />
  );
}
