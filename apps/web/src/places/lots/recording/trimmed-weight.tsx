import type { Lot } from '@larderbook/contracts';
import { massOf, type EnteredMass } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Status } from '../../../ui/status';
import { sayWeight } from '../say/say-entered';
import { sayGrams } from '../say/say-grams';
import { beginningWith, massUnits } from './mass-units';
import type { Source } from './source-choice';
import type { MeatForm } from './use-meat-form';
import { WeightKeypad } from './weight-keypad';

type TrimmedWeightProps = { lot: Lot; form: MeatForm; source: Source; taken: EnteredMass; onClose: () => void };

/** The weight after boning and trimming, on which cure and spices are reckoned. */
export function TrimmedWeight({ lot, form, source, taken, onClose }: TrimmedWeightProps) {
  const { units } = useShop();
  const busy = form.recording.busy;
  return (
    <Dialog
      title={source.what}
      onClose={onClose}
      actions={
        <>
          <Button onClick={() => form.setTaken(undefined)}>Back</Button>
          <Button busy={busy} onClick={() => void form.save(source, taken, taken)}>
            Nothing was trimmed
          </Button>
        </>
      }
    >
      <WeightKeypad
        key="trimmed"
        label="Trimmed meat"
        units={beginningWith(taken.unit, massUnits(units, gramsOf(taken), gramsOf(taken) / 2))}
        previous={`${sayWeight(taken)} taken`}
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

/** What the meat block would be, before it is kept. */
function MeatBlock({ lot, taken, trimmed, correctedGrams = 0 }: MeatBlockProps) {
  const { units } = useShop();
  if (massOf(trimmed) > massOf(taken)) {
    return <Status state="missed" word="More than was taken" margin={sayWeight(taken)} />;
  }
  const block = lot.meatBlockGrams - correctedGrams + gramsOf(trimmed);
  return (
    <p>
      Meat block then <strong>{sayGrams(block, units)}</strong>. Cure and spices are reckoned on it.
    </p>
  );
}
