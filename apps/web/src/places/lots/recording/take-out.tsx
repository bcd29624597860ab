import { recordRemoval, removalKinds, type Lot } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { Dialog } from '../../../ui/dialog';
import { Tiles } from '../../../ui/tiles';
import { sayWeight } from '../say/say-entered';
import { capital } from '../say/say-standing';
import { amendsOf, type Amending } from './amending';
import { Circumstances } from './circumstances';
import { massUnits } from './mass-units';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

type Kind = (typeof removalKinds)[number];
const ofALot = removalKinds.filter((kind) => kind !== 'returned to supplier');

/** Weight that leaves a lot without being packed: what kind, then how much. */
export function TakeOut({ lot, amending, onClose }: { lot: Lot; amending?: Amending; onClose: () => void }) {
  const { units } = useShop();
  const recording = useRecording(recordRemoval);
  const takenAt = useTakenAt(amending);
  const [kind, setKind] = useState<Kind>();
  const [kept, setKept] = useState<EnteredMass>();
  if (!kind) {
    return (
      <Dialog title="What is taken out?" onClose={onClose}>
        <Tiles label="Kinds" tiles={ofALot.map((each) => ({ key: each, title: capital(each), onTap: () => setKind(each) }))} />
      </Dialog>
    );
  }
  if (recording.saved && kept) {
    return <SavedDialog title="Taken out" what={`${kind} ${sayWeight(kept)}`} saved={recording.saved} onClose={onClose} />;
  }
  const save = (weight: EnteredMass) => {
    setKept(weight);
    return recording.save(
      { removalId: recording.id, lotId: lot.lotId, kind, weight, note: '', takenAt: takenAt.at(), ...amendsOf(amending) },
      `${kind} ${sayWeight(weight)}, lot ${lot.code}`,
    );
  };
  return (
    <Dialog title={`Taken out: ${kind}`} onClose={onClose}>
      <Circumstances takenAt={takenAt} />
      <WeightKeypad
        label="Weight"
        units={massUnits(units, lot.meatBlockGrams || 25_000)}
        error={recording.refused?.words}
        busy={recording.busy}
        onSave={(weight) => void save(weight)}
      />
    </Dialog>
  );
}
