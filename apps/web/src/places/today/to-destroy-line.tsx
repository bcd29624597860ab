import type { Disposition } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';

/** Product that is held apart until its destruction is recorded. */
export function ToDestroyLine({ disposition }: { disposition: Disposition }) {
  const { zone } = useShop();
  const { decision, weight, code, by, at, speaksFor } = disposition;
  const deviationId = speaksFor[0]?.deviationId ?? '';
  const what = `${weight.value} ${weight.unit} of ${code}`;
  return (
    <SheetEntry
      what={
        <SheetLink to="/deviations/$deviationId" params={{ deviationId }}>
          {what}
        </SheetLink>
      }
      note={decision === 'recall' ? 'Called back. Record how it was destroyed.' : 'Keep it apart. Record how it was destroyed.'}
      who={
        <>
          {by}, <Moment at={at} zone={zone} />
        </>
      }
    />
  );
}
