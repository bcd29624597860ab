import { recordRemoval, removalKinds, type Lot } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { Dialog } from '../../../ui/dialog';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';
import { enteredWeight } from '../say/entered';
import { amendsOf, type Amending } from './amending';
import { Circumstances } from './circumstances';
import { massUnits } from './mass-units';
import { SavedDialog } from './saved-dialog';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

type Kind = (typeof removalKinds)[number];
const ofALot = removalKinds.filter((kind) => kind !== 'returned to supplier');

export function TakeOut({ lot, amending, onClose }: { lot: Lot; amending?: Amending; onClose: () => void }) {
  const say = useSay('lot-forms');
  const sayEntry = useSay('entries');
  const { units } = useShop();
  const recording = useRecording(recordRemoval);
  const takenAt = useTakenAt(amending);
  const [kind, setKind] = useState<Kind>();
  const [kept, setKept] = useState<EnteredMass>();
  if (!kind) {
    return (
      <Dialog title={say('what-taken-out')} onClose={onClose}>
        <Tiles
          label={say('kinds')}
          tiles={ofALot.map((each) => ({ key: each, title: sayEntry(codeOf('removed', each)), onTap: () => setKind(each) }))}
        />
      </Dialog>
    );
  }
  const named = sayEntry(codeOf('removed', kind));
  const weighing = (weight: EnteredMass) => say('kind-weight', { kind: named, weight: enteredWeight(weight) });
  if (recording.saved && kept) {
    return <SavedDialog title={say('taken-out')} what={weighing(kept)} saved={recording.saved} onClose={onClose} />;
  }
  const save = (weight: EnteredMass) => {
    setKept(weight);
    return recording.save(
      { removalId: recording.id, lotId: lot.lotId, kind, weight, note: '', takenAt: takenAt.toRecord(), ...amendsOf(amending) },
      say('what-in-lot', { what: weighing(weight), lot: lot.code }),
    );
  };
  return (
    <Dialog title={say('taken-out-kind', { kind: named })} onClose={onClose}>
      <Circumstances takenAt={takenAt} />
      <WeightKeypad
        label={say('weight')}
        units={massUnits(units, lot.meatBlockGrams || 25_000)}
        error={recording.refused?.words}
        busy={recording.busy}
        onSave={(weight) => void save(weight)}
      />
    </Dialog>
  );
}
