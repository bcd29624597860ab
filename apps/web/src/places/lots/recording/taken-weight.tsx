import { useShop } from '../../../api/use-shop';
import { Dialog } from '../../../ui/dialog';
import { Status } from '../../../ui/status';
import { sayWeight } from '../say/say-entered';
import { sayGrams } from '../say/say-grams';
import { Circumstances } from './circumstances';
import { isMoreThan, massUnits } from './mass-units';
import type { Source } from './source-choice';
import type { MeatForm } from './use-meat-form';
import { WeightKeypad } from './weight-keypad';

/** Meat in one go, where nothing says how much there is. Common practice, no source. */
export const usualMeatGrams = 100_000;

/** The weight taken from a delivery, before trimming, beside what is left of it. */
export function TakenWeight({ form, source, onClose }: { form: MeatForm; source: Source; onClose: () => void }) {
  const { units } = useShop();
  const { code, what, leftGrams } = source;
  const left = leftGrams === undefined ? undefined : `${sayGrams(leftGrams, units)} left of ${code}`;
  return (
    <Dialog title={what} onClose={onClose}>
      <Circumstances takenAt={form.takenAt} />
      <WeightKeypad
        key="taken"
        label="Weight taken, before trimming"
        units={massUnits(units, leftGrams ?? usualMeatGrams)}
        limit={left}
        previous={form.corrected && sayWeight(form.corrected.weight)}
        saveLabel="Next: after trimming"
        onSave={(weight) => form.setTaken(weight)}
        preview={(weight) =>
          leftGrams !== undefined && isMoreThan(weight, leftGrams) && <Status state="missed" word="More than is left" margin={left} />
        }
      />
    </Dialog>
  );
}
