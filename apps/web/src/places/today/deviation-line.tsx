import type { Deviation } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status } from '../../ui/status';
import { statusOf } from '../../ui/status-of';

/** A deviation that is open: whose it is, what happened, by how much, and what is still to be written. */
export function DeviationLine({ deviation }: { deviation: Deviation }) {
  const { zone } = useShop();
  const { deviationId, number, description, verdict, opened, actions } = deviation;
  const { covered, undecided, atStake } = deviation;
  const decide = covered ? 'not closed yet' : `${undecided.value} ${undecided.unit} of ${atStake.value} ${atStake.unit} to decide`;
  const missing = actions.length === 0 ? 'no corrective action yet' : decide;
  return (
    <SheetEntry
      what={
        <SheetLink to="/deviations/$deviationId" params={{ deviationId }}>
          {saySubject(deviation)}
        </SheetLink>
      }
      note={description}
      who={
        <>
          Deviation {number}, <Moment at={opened.at} zone={zone} />: {missing}
        </>
      }
      verdict={verdict && <Status {...statusOf(verdict)} margin={verdict.margin} />}
    />
  );
}

/** "SMS-26328-1 Smoked sausage", or the delivery. */
export function saySubject({ lot, receipt }: Pick<Deviation, 'lot' | 'receipt'>): string {
  if (lot) return `${lot.code} ${lot.productName}`;
  return receipt ? `${receipt.code} ${receipt.itemName}` : '';
}
