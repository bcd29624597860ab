import { packLot, type Lot } from '@larderbook/contracts';
import { useBy as lastDayOf, type EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { dateWords } from '../../../ui/moment';
import { wallTime } from '../../../ui/wall-time';
import { sayWeight } from '../say/say-entered';
import { amendsOf, type Amending } from './amending';
import { Counted } from './counted';
import { massUnits } from './mass-units';
import { SavedDialog } from './saved-dialog';
import { UseBy } from './use-by';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

/** A package of a small shop. Common practice, no source. */
const usualGrams = 5000;

/** A run of equal packages, one number a step: how many, the net weight of one, and the use-by as proposed. */
export function Pack({ lot, amending, onClose }: { lot: Lot; amending?: Amending; onClose: () => void }) {
  const { units, zone } = useShop();
  const recording = useRecording(packLot);
  const takenAt = useTakenAt(amending);
  const [count, setCount] = useState<number>();
  const [net, setNet] = useState<EnteredMass>();

  if (count === undefined) return <Counted onCount={setCount} onClose={onClose} />;
  if (!net) {
    const back = <Button onClick={() => setCount(undefined)}>Back to the count</Button>;
    return (
      <Dialog title={`Pack ${count}`} onClose={onClose} actions={back}>
        <WeightKeypad
          label="Net weight of one package"
          units={massUnits(units, usualGrams)}
          saveLabel="Next: use-by"
          onSave={(weight) => setNet(weight)}
        />
      </Dialog>
    );
  }
  const what = `${count} × ${sayWeight(net)}`;
  const proposed = lastDayOf(wallTime(takenAt.at(), zone).slice(0, 10), lot.useByDays);
  const save = (changed: string | undefined) =>
    recording.save(
      { packingId: recording.id, lotId: lot.lotId, count, net, useBy: changed, takenAt: takenAt.at(), ...amendsOf(amending) },
      `Packed ${what}, lot ${lot.code}`,
    );
  const again = () => {
    recording.again();
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
        onKeep={(changed) => void save(changed)}
        onClose={onClose}
      />
    );
  }
  const packed = saved.state === 'sent' ? `${saved.reply.code}: ${what}, use by ${dateWords(saved.reply.useBy)}` : what;
  return (
    <SavedDialog title="Packed" what={packed} saved={saved} onClose={onClose}>
      {!amending && <Button onClick={again}>Pack more</Button>}
    </SavedDialog>
  );
}
