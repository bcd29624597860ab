import type { Lot } from '@larderbook/contracts';
import { massIn, massOf, type EnteredMass } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Status } from '../../../ui/status';
import { useFigures, useSay } from '../../../ui/voice';
import { enteredWeight } from '../say/entered';
import { beginningWith, massUnits } from './mass-units';
import type { Source } from './source-choice';
import type { MeatForm } from './use-meat-form';
import { WeightKeypad } from './weight-keypad';

type TrimmedWeightProps = { lot: Lot; form: MeatForm; source: Source; taken: EnteredMass; onClose: () => void };

/** Cure and spices are reckoned on the weight after boning and trimming. */
export function TrimmedWeight({ lot, form, source, taken, onClose }: TrimmedWeightProps) {
  const say = useSay('lot-forms');
  const sayShared = useSay('shared');
  const { units } = useShop();
  const busy = form.recording.busy;
  return (
    <Dialog
      title={source.what}
      onClose={onClose}
      actions={
        <>
          <Button onClick={() => form.setTaken(undefined)}>{sayShared('back')}</Button>
          <Button busy={busy} onClick={() => void form.save(source, taken, taken)}>
            {say('nothing-trimmed')}
          </Button>
        </>
      }
    >
      <WeightKeypad
        key="trimmed"
        label={say('trimmed-meat')}
        units={beginningWith(taken.unit, massUnits(units, gramsOf(taken), gramsOf(taken) / 2))}
        previous={say('weight-was-taken', { weight: enteredWeight(taken) })}
        error={form.recording.refused?.words}
        busy={busy}
        onSave={(trimmed, sure) => void form.save(source, taken, trimmed, sure)}
        preview={(trimmed) => <MeatBlock lot={lot} taken={taken} trimmed={trimmed} correctedGrams={form.corrected?.trimmed.grams} />}
      />
    </Dialog>
  );
}

const gramsOf = (weight: EnteredMass): number => Number(massOf(weight)) / 1e15;

type MeatBlockProps = { lot: Lot; taken: EnteredMass; trimmed: EnteredMass; correctedGrams?: number };

function MeatBlock({ lot, taken, trimmed, correctedGrams = 0 }: MeatBlockProps) {
  const say = useSay('lot-forms');
  const figures = useFigures();
  const { units } = useShop();
  if (massOf(trimmed) > massOf(taken)) {
    return <Status state="missed" word={say('more-than-taken')} margin={figures.quantity(enteredWeight(taken))} />;
  }
  const block = lot.meatBlockGrams - correctedGrams + gramsOf(trimmed);
  return <p>{say('meat-block-then', { weight: massIn(units, block) })}</p>;
}
