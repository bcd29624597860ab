import { putIn, type Lot } from '@larderbook/contracts';
import { massOf, type EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Status } from '../../../ui/status';
import { sayWeight } from '../say/say-entered';
import { sayGrams } from '../say/say-grams';
import { useShop } from '../../../api/use-shop';
import { AfterSaving } from './after-saving';
import { amendsOf, type Amending } from './amending';
import { Circumstances } from './circumstances';
import { isMoreThan, massUnits } from './mass-units';
import { SourceChoice, type Source } from './source-choice';
import { useRecording } from '../../../outbox/use-recording';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';

type PutInMeatProps = { lot: Lot; amending?: Amending; onNext?: { words: string; go: () => void }; onClose: () => void };

/** Rework in one go, where nothing says how much there is. Common practice, no source. */
const usualGrams = 100_000;

/** Meat into a lot, one number a step: which delivery, the weight taken, the weight after trimming. */
export function PutInMeat({ lot, amending, onNext, onClose }: PutInMeatProps) {
  const { units } = useShop();
  const recording = useRecording(putIn);
  const takenAt = useTakenAt(amending);
  const corrected = lot.inputs.find(({ inputId }) => inputId === amending?.id);
  const [source, setSource] = useState<Source | undefined>(corrected && { ...corrected.from, leftGrams: corrected.weight.grams });
  const [taken, setTaken] = useState<EnteredMass>();

  const what = source && taken ? `${source.what} ${sayWeight(taken)} taken from ${source.code}` : 'Meat';
  const save = (from: Source, weight: EnteredMass, trimmed: EnteredMass) => recording.save(
    { inputId: recording.id, lotId: lot.lotId, receiptId: from.receiptId, sourceLotId: from.lotId, weight, trimmed, takenAt: takenAt.at(), ...amendsOf(amending) },
    `${from.what} ${sayWeight(trimmed)}, lot ${lot.code}`,
  );
  const more = () => {
    recording.again();
    setSource(undefined);
    setTaken(undefined);
  };

  if (recording.saved) {
    const { saved } = recording;
    const reply = saved.state === 'sent' ? saved.reply : undefined;
    return (
      <Dialog title="Meat is in" onClose={onClose} closeLabel="Done">
        <AfterSaving state={saved.state} what={reply ? `Meat block now ${sayGrams(reply.meatBlockGrams, units)}` : what} flags={reply?.flags} deviationId={reply?.deviationId}>
          {onNext && <Button look="primary" onClick={onNext.go}>{onNext.words}</Button>}
          {!amending && <Button onClick={more}>More meat</Button>}
        </AfterSaving>
      </Dialog>
    );
  }
  if (!source) {
    return <Dialog title="Which meat?" onClose={onClose}><SourceChoice lot={lot} onChoose={setSource} /></Dialog>;
  }
  const { leftGrams } = source;
  const left = leftGrams === undefined ? source.code : `${sayGrams(leftGrams, units)} left of ${source.code}`;
  const scale = massUnits(units, leftGrams ?? usualGrams);
  if (!taken) {
    return (
      <Dialog title={source.what} onClose={onClose}>
        <Circumstances takenAt={takenAt} />
        <WeightKeypad
          key="taken" label="Weight taken, before trimming" units={scale} limit={left} saveLabel="Next: after trimming" onSave={setTaken}
          preview={(weight) => leftGrams !== undefined && isMoreThan(weight, leftGrams) && <Status state="missed" word="More than is left" margin={left} />}
        />
      </Dialog>
    );
  }
  return (
    <Dialog
      title={source.what} onClose={onClose}
      actions={<><Button onClick={() => setTaken(undefined)}>Back</Button><Button busy={recording.busy && 'Keeping it…'} onClick={() => void save(source, taken, taken)}>Nothing was trimmed</Button></>}
    >
      <WeightKeypad
        key="trimmed" label="Weight after trimming" units={scale} previous={`${sayWeight(taken)} taken`}
        error={recording.refused?.words} busy={recording.busy && 'Keeping it…'} onSave={(trimmed) => void save(source, taken, trimmed)}
        preview={(trimmed) => <AfterTrimming lot={lot} taken={taken} trimmed={trimmed} corrected={corrected?.trimmed.grams} />}
      />
    </Dialog>
  );
}

type AfterTrimmingProps = { lot: Lot; taken: EnteredMass; trimmed: EnteredMass; corrected?: number };

/** The cure is reckoned on the meat as trimmed, so the meat block is shown before it is kept. */
function AfterTrimming({ lot, taken, trimmed, corrected = 0 }: AfterTrimmingProps) {
  const { units } = useShop();
  if (massOf(trimmed) > massOf(taken)) return <Status state="missed" word="More than was taken" margin={sayWeight(taken)} />;
  const block = lot.meatBlockGrams - corrected + Number(massOf(trimmed)) / 1e15;
  return <p>Meat block then <strong>{sayGrams(block, units)}</strong>. Cure and spices are reckoned on it.</p>;
}
