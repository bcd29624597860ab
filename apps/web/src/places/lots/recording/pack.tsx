import { packLot, type Lot } from '@larderbook/contracts';
import { useBy as lastDayOf, type EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { wallTime } from '../../../ui/wall-time';
import { useSay } from '../../../ui/voice';
import { enteredWeight } from '../say/entered';
import { amendsOf, type Amending } from './amending';
import { Counted } from './counted';
import { massUnits } from './mass-units';
import { SavedDialog } from './saved-dialog';
import { UseBy } from './use-by';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

/** A package of a small shop. Common practice, no source. */
const usualGrams = 5000;

export function Pack({ lot, amending, onClose }: { lot: Lot; amending?: Amending; onClose: () => void }) {
  const say = useSay('lot-forms');
  const { units, zone } = useShop();
  const recording = useRecording(packLot);
  const takenAt = useTakenAt(amending);
  const [count, setCount] = useState<number>();
  const [net, setNet] = useState<EnteredMass>();

  if (count === undefined) return <Counted onCount={setCount} onClose={onClose} />;
  if (!net) {
    const back = <Button onClick={() => setCount(undefined)}>{say('back-to-count')}</Button>;
    return (
      <Dialog title={say('pack-what', { what: String(count) })} onClose={onClose} actions={back}>
        <WeightKeypad
          label={say('net-weight')}
          units={massUnits(units, usualGrams)}
          saveLabel={say('next-use-by')}
          onSave={(weight) => setNet(weight)}
        />
      </Dialog>
    );
  }
  const what = say('count-weight', { count: String(count), weight: enteredWeight(net) });
  const proposed = lastDayOf(wallTime(takenAt.at(), zone).slice(0, 10), lot.useByDays);
  const save = (changed: string | undefined) =>
    recording.save(
      { packingId: recording.id, lotId: lot.lotId, count, net, useBy: changed, takenAt: takenAt.toRecord(), ...amendsOf(amending) },
      say('packed-in-lot', { what, lot: lot.code }),
    );
  const again = () => {
    recording.again();
    takenAt.again();
    setCount(undefined);
    setNet(undefined);
  };
  const { saved } = recording;
  if (!saved) {
    return (
      <UseBy
        lot={lot}
        what={what}
        proposed={proposed}
        takenAt={takenAt}
        busy={recording.busy}
        refused={recording.refused?.words}
        onBack={() => setNet(undefined)}
        onSave={(changed) => void save(changed)}
        onClose={onClose}
      />
    );
  }
  const packed = saved.state === 'sent' ? say('packed-code', { code: saved.reply.code, what, day: { day: saved.reply.useBy } }) : what;
  return (
    <SavedDialog title={say('packed')} what={packed} saved={saved} onClose={onClose}>
      {!amending && <Button onClick={again}>{say('pack-more')}</Button>}
    </SavedDialog>
  );
}
