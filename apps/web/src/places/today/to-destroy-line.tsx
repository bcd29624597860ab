import type { Disposition } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { useSay } from '../../ui/voice';

export function ToDestroyLine({ disposition }: { disposition: Disposition }) {
  const say = useSay('today');
  const { zone } = useShop();
  const { decision, weight, code, by, at, speaksFor } = disposition;
  const deviationId = speaksFor[0]?.deviationId ?? '';
  const what = say('weight-of', { weight: { value: String(weight.value), unit: weight.unit }, code });
  return (
    <SheetEntry
      what={
        <SheetLink to="/deviations/$deviationId" params={{ deviationId }}>
          {what}
        </SheetLink>
      }
      note={say(decision === 'recall' ? 'called-back' : 'record-destroyed')}
      who={
        <>
          {by}, <Moment at={at} zone={zone} />
        </>
      }
    />
  );
}
