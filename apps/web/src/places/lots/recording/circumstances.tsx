import { useState, type ReactNode } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { timeWords } from '../../../ui/moment';
import { sayGrams } from '../say/say-grams';
import { DeliveryChoice } from './delivery-choice';
import { InstrumentChoice } from './instrument-choice';
import css from './recording.module.css';
import type { Delivery } from './use-delivery';
import type { Instrument } from './use-instrument';
import type { TakenAt } from './use-taken-at';

type CircumstancesProps = { takenAt: TakenAt; instrument?: Instrument; delivery?: Delivery; children?: ReactNode };
type Circumstance = 'time' | 'instrument' | 'delivery';

/** When, with what and from what, on one line; each is changed by tapping it, and none needs a tap. */
export function Circumstances({ takenAt, instrument, delivery, children }: CircumstancesProps) {
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
        {delivery?.chosen && toggle('delivery', `From ${delivery.chosen.code}, ${sayGrams(delivery.chosen.leftGrams, units)} left`)}
        {instrument && toggle('instrument', sayInstrument(instrument))}
        {toggle('time', takenAt.value ? `At ${timeWords(takenAt.value, zone)}` : 'Just now')}
      </div>
      {open === 'time' && <DateTimeField label="When was it?" zone={zone} value={takenAt.value || now} onChange={takenAt.setValue} />}
      {open === 'instrument' && instrument && <InstrumentChoice instrument={instrument} onChosen={shut} />}
      {open === 'delivery' && delivery && <DeliveryChoice delivery={delivery} onChosen={shut} />}
      {delivery && !delivery.chosen && (
        <p className={css.flag}>No delivery of this is left, so none is named. Record it under Receiving to have it traced.</p>
      )}
    </div>
  );
}

/** An overdue instrument is said, not refused: what it reads is kept and carries that remark. */
const sayInstrument = ({ chosen }: Instrument): string =>
  chosen ? `With ${chosen.name}${chosen.overdue ? ', overdue for its check' : ''}` : 'No instrument named';
