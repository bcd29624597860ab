import { massIn } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import { useState, type ReactNode } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { useSay } from '../../../ui/voice';
import { DeliveryChoice } from './delivery-choice';
import { InstrumentChoice } from './instrument-choice';
import css from './recording.module.css';
import type { Delivery } from './use-delivery';
import type { Instrument } from './use-instrument';
import type { TakenAt } from './use-taken-at';

type CircumstancesProps = { takenAt: TakenAt; instrument?: Instrument; delivery?: Delivery; children?: ReactNode };
type Circumstance = 'time' | 'instrument' | 'delivery';

export function Circumstances({ takenAt, instrument, delivery, children }: CircumstancesProps) {
  const say = useSay('lot-forms');
  const { zone, units } = useShop();
  const [open, setOpen] = useState<Circumstance>();
  const [now] = useState(() => new Date().toISOString());
  const shut = () => setOpen(undefined);
  const toggle = (which: Circumstance, words: string) => (
    <Button look="quiet" aria-expanded={open === which} onClick={() => setOpen(open === which ? undefined : which)}>
      {words}
    </Button>
  );
  return (
    <div className={css.circumstances}>
      <div className={css.line}>
        {children}
        {delivery?.chosen &&
          toggle('delivery', say('from-left', { code: delivery.chosen.code, weight: massIn(units, delivery.chosen.leftGrams) }))}
        {instrument && toggle('instrument', instrumentIn(instrument, say))}
        {toggle('time', takenAt.value ? say('at-time', { time: { at: takenAt.value, show: 'time' } }) : say('just-now'))}
      </div>
      {open === 'time' && <DateTimeField label={say('when-was-it')} zone={zone} value={takenAt.value || now} onChange={takenAt.setValue} />}
      {open === 'instrument' && instrument && <InstrumentChoice instrument={instrument} onChosen={shut} />}
      {open === 'delivery' && delivery && <DeliveryChoice delivery={delivery} onChosen={shut} />}
      {delivery && !delivery.chosen && <p className={css.flag}>{say('no-delivery-left')}</p>}
    </div>
  );
}

/** An overdue instrument is not refused: its reading is kept with that remark. */
function instrumentIn({ chosen }: Instrument, say: SayOf<'lot-forms'>): string {
  if (!chosen) return say('no-instrument');
  return say(chosen.overdue ? 'with-overdue' : 'with-instrument', { instrument: chosen.name });
}
