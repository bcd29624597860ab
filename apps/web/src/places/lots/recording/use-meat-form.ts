import { putIn, type Lot } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { useSure } from '../../../outbox/use-sure';
import { useSay } from '../../../ui/voice';
import { enteredWeight } from '../say/entered';
import { amendsOf, type Amending } from './amending';
import type { Source } from './source-choice';
import { useTakenAt } from './use-taken-at';

export type MeatForm = ReturnType<typeof useMeatForm>;

/** A correction keeps its source. */
export function useMeatForm(lot: Lot, amending: Amending | undefined) {
  const say = useSay('lot-forms');
  const recording = useRecording(putIn);
  const { isSure, setAsked } = useSure(recording.refused);
  const takenAt = useTakenAt(amending);
  const corrected = lot.inputs.find(({ inputId }) => inputId === amending?.id);
  const [source, setSource] = useState<Source | undefined>(corrected?.from);
  const [taken, setTaken] = useState<EnteredMass>();

  const save = (from: Source, weight: EnteredMass, trimmed: EnteredMass, sure = false) => {
    setAsked({ weight, trimmed });
    return recording.save(
      {
        inputId: recording.id,
        lotId: lot.lotId,
        receiptId: from.receiptId,
        sourceLotId: from.lotId,
        weight,
        trimmed,
        sure: sure || isSure({ weight, trimmed }) || undefined,
        takenAt: takenAt.toRecord(),
        ...amendsOf(amending),
      },
      say('what-in-lot', { what: say('item-weight', { item: from.what, weight: enteredWeight(trimmed) }), lot: lot.code }),
    );
  };
  const again = () => {
    recording.again();
    takenAt.again();
    setSource(undefined);
    setTaken(undefined);
  };
  return { recording, takenAt, corrected, source, setSource, taken, setTaken, save, again };
}
