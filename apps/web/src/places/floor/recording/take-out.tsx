import { recordRemoval, removalKinds, type Lot } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { Dialog } from '../../../ui/dialog';
import { sayWeight } from '../say/say-entered';
import { useShop } from '../use-shop';
import { AfterSaving } from './after-saving';
import { BigTile } from './big-tile';
import { Circumstances } from './circumstances';
import { massUnits } from './mass-units';
import css from './recording.module.css';
import { useRecording } from './use-recording';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

type Kind = (typeof removalKinds)[number];
const ofALot = removalKinds.filter((kind) => kind !== 'returned to supplier');

/** Weight that leaves a lot without being packed: what kind, then how much. */
export function TakeOut({ lot, onClose }: { lot: Lot; onClose: () => void }) {
  const { units } = useShop();
  const recording = useRecording(recordRemoval);
  const takenAt = useTakenAt();
  const [kind, setKind] = useState<Kind>();
  const [kept, setKept] = useState<EnteredMass>();
  if (!kind) {
    return (
      <Dialog title="What is taken out?" onClose={onClose}>
        <ul className={css.choices}>
          {ofALot.map((each) => <BigTile key={each} title={each.charAt(0).toUpperCase() + each.slice(1)} lines={[]} onPress={() => setKind(each)} />)}
        </ul>
      </Dialog>
    );
  }
  if (recording.saved && kept) {
    return (
      <Dialog title="Taken out" onClose={onClose}>
        <AfterSaving state={recording.saved.state} what={`${kind} ${sayWeight(kept)}`} onDone={onClose} />
      </Dialog>
    );
  }
  const save = (weight: EnteredMass) => {
    setKept(weight);
    return recording.save({ removalId: recording.id, lotId: lot.lotId, kind, weight, note: '', takenAt: takenAt.at() }, `${kind} ${sayWeight(weight)}, lot ${lot.code}`);
  };
  return (
    <Dialog title={`Taken out: ${kind}`} onClose={onClose}>
      <Circumstances takenAt={takenAt} />
      <WeightKeypad
        label="Weight" units={massUnits(units, lot.meatBlockGrams || 25_000)} error={recording.refused?.words} busy={recording.busy && 'Keeping it…'}
        onSave={(weight) => void save(weight)}
      />
    </Dialog>
  );
}
