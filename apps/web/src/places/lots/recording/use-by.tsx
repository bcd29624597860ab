import type { Lot } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { DateField } from '../../../ui/date-field';
import { Dialog } from '../../../ui/dialog';
import { Facts } from '../../../ui/facts';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useClock, useSay } from '../../../ui/voice';
import { Circumstances } from './circumstances';
import type { TakenAt } from './use-taken-at';

type UseByProps = {
  lot: Lot;
  what: string;
  /** As in "2026-04-02". */
  proposed: string;
  takenAt: TakenAt;
  busy: boolean;
  refused?: string;
  onBack: () => void;
  /** Undefined when the proposed day stands. */
  onSave: (changed: string | undefined) => void;
  onClose: () => void;
};

export function UseBy({ lot, what, proposed, takenAt, busy, refused, onBack, onSave, onClose }: UseByProps) {
  const say = useSay('lot-forms');
  const sayShared = useSay('shared');
  const clock = useClock();
  const [changed, setChanged] = useState('');
  const facts = [
    { name: say('use-by'), value: clock.calendarDay(changed || proposed) },
    { name: say('storage'), value: lot.storage },
  ];
  return (
    <Dialog
      title={say('pack-what', { what })}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onBack}>{say('back-to-weight')}</Button>
          <Button look="primary" busy={busy} onClick={() => onSave(changed || undefined)}>
            {sayShared('save')}
          </Button>
        </>
      }
    >
      <Circumstances takenAt={takenAt} />
      <Stack>
        <Facts facts={facts} />
        <DateField
          label={say('another-use-by')}
          optional
          hint={say('use-by-proposed', { days: lot.useByDays })}
          value={changed}
          onChange={setChanged}
        />
        {refused && <Problem error={{ title: refused }} />}
      </Stack>
    </Dialog>
  );
}
