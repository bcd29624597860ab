import { useState, type ReactNode } from 'react';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { timeWords } from '../../../ui/moment';
import { useShop } from '../use-shop';
import { InstrumentChoice } from './instrument-choice';
import css from './recording.module.css';
import type { TakenAt } from './use-taken-at';
import type { Instrument } from './use-instrument';

type CircumstancesProps = { takenAt: TakenAt; instrument?: Instrument; children?: ReactNode };

/** When and with what, on one quiet line; each is changed by tapping it, and none needs a tap. */
export function Circumstances({ takenAt, instrument, children }: CircumstancesProps) {
  const { zone } = useShop();
  const [open, setOpen] = useState<'time' | 'instrument'>();
  const toggle = (which: 'time' | 'instrument') => setOpen(open === which ? undefined : which);
  return (
    <div className={css.circumstances}>
      <div className={css.line}>
        <Button look="quiet" aria-expanded={open === 'time'} onClick={() => toggle('time')}>
          {takenAt.value ? `Taken at ${timeWords(takenAt.value, zone)}` : 'Taken now'}
        </Button>
        {instrument && (
          <Button look="quiet" aria-expanded={open === 'instrument'} onClick={() => toggle('instrument')}>
            {instrument.chosen ? `With ${instrument.chosen.name}` : 'No instrument named'}
          </Button>
        )}
      </div>
      {open === 'time' && <DateTimeField label="When was it taken?" zone={zone} value={takenAt.value || new Date().toISOString()} onChange={takenAt.setValue} />}
      {open === 'instrument' && instrument && <InstrumentChoice instrument={instrument} onChosen={() => setOpen(undefined)} />}
      {instrument?.chosen?.overdue && <p className={css.flag}>{instrument.chosen.name} is overdue for its check. What you record is kept and carries that remark.</p>}
      {children}
    </div>
  );
}
