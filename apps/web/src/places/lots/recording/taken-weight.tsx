import { massIn } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { Dialog } from '../../../ui/dialog';
import { Status } from '../../../ui/status';
import { useFigures, useSay } from '../../../ui/voice';
import { enteredWeight } from '../say/entered';
import { Circumstances } from './circumstances';
import { isMoreThan, massUnits } from './mass-units';
import type { Source } from './source-choice';
import type { MeatForm } from './use-meat-form';
import { WeightKeypad } from './weight-keypad';

/** Meat in one go, where nothing says how much there is. Common practice, no source. */
export const usualMeatGrams = 100_000;

export function TakenWeight({ form, source, onClose }: { form: MeatForm; source: Source; onClose: () => void }) {
  const say = useSay('lot-forms');
  const figures = useFigures();
  const { units } = useShop();
  const { code, what, leftGrams } = source;
  const left = leftGrams === undefined ? undefined : say('left-of', { weight: massIn(units, leftGrams), code });
  return (
    <Dialog title={what} onClose={onClose}>
      <Circumstances takenAt={form.takenAt} />
      <WeightKeypad
        key="taken"
        label={say('weight-taken')}
        units={massUnits(units, leftGrams ?? usualMeatGrams)}
        limit={left}
        previous={form.corrected && figures.quantity(enteredWeight(form.corrected.weight))}
        saveLabel={say('next-trimming')}
        onSave={(weight) => form.setTaken(weight)}
        preview={(weight) =>
          leftGrams !== undefined && isMoreThan(weight, leftGrams) && <Status state="missed" word={say('more-than-left')} margin={left} />
        }
      />
    </Dialog>
  );
}
