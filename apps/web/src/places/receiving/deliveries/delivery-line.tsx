import { flagWords, type Receipt } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { enteredWords } from '../../../ui/moment';
import { SheetEntry } from '../../../ui/sheet-entry';
import { SheetLink } from '../../../ui/sheet-link';
import css from './deliveries.module.css';
import { DeliveryStatus } from './delivery-status';
import { sayEntered, sayLeft, saySource } from './say-receipt';

/** One delivery on the sheet; one that was refused is struck through and says why. */
export function DeliveryLine({ receipt }: { receipt: Receipt }) {
  const { receiptId, code, item, weight, temperature, decision, reason, flags, made, corrections, voided } = receipt;
  const isRefused = decision === 'refused' || voided;
  const { zone } = useShop();
  const corrected = corrections.at(-1);
  const link = (
    <SheetLink to="/receiving/$receiptId" params={{ receiptId }}>
      {item.name}
    </SheetLink>
  );
  const notes = [
    saySource(receipt),
    ...flags.map((flag) => flagWords[flag]),
    decision === 'refused' && reason,
    corrected && `${voided ? 'Voided' : 'Corrected'} by ${corrected.made.name}: ${corrected.reason}`,
    enteredWords({ at: Date.parse(made.at), enteredAt: Date.parse(made.recordedAt) }, zone),
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
          {isRefused ? <s>{sayEntered(weight)}</s> : <span>{sayEntered(weight)}</span>}
          {temperature && <span>{sayEntered(temperature)}</span>}
          <small>{voided ? undefined : sayLeft(receipt)}</small>
        </span>
      }
    />
  );
}
