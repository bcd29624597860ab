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
  const shut = () => setOpen(undefined);
  const show = (which: Circumstance) => {
    if (which === 'time') takenAt.setValue(takenAt.at()); // what stands in the field is what is recorded
    setOpen(which);
  };
  const toggle = (which: Circumstance, words: string) => (
    <Button look="quiet" aria-expanded={open === which} onClick={() => (open === which ? shut() : show(which))}>
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
        {toggle('time', timeIn(takenAt, say))}
      </div>
      {open === 'time' && <DateTimeField label={say('when-was-it')} zone={zone} value={takenAt.value ?? ''} onChange={takenAt.setValue} />}
      {open === 'instrument' && instrument && <InstrumentChoice instrument={instrument} onChosen={shut} />}
      {open === 'delivery' && delivery && <DeliveryChoice delivery={delivery} onChosen={shut} />}
      {delivery && !delivery.chosen && <p className={css.flag}>{say('no-delivery-left')}</p>}
    </div>
  );
}

function timeIn({ value }: TakenAt, say: SayOf<'lot-forms'>): string {
  if (value === undefined) return say('just-now');
  return value === '' ? say('when-was-it') : say('at-time', { time: { at: value, show: 'time' } });
}

/** An overdue instrument is not refused: its reading is kept with that remark. */
function instrumentIn({ chosen }: Instrument, say: SayOf<'lot-forms'>): string {
  if (!chosen) return say('no-instrument');
  return say(chosen.overdue ? 'with-overdue' : 'with-instrument', { instrument: chosen.name });
}
