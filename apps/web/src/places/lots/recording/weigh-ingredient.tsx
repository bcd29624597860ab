import { listItems, weighIn, type Lot } from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';
import { useRecording } from '../../../outbox/use-recording';
import { isSureOf } from '../../../outbox/use-sure';
import { Caution } from '../../../ui/caution';
import { Dialog } from '../../../ui/dialog';
import { useSay, useSpoken } from '../../../ui/voice';
import { codedText } from '@larderbook/messages';
import { previewWeighing } from '../preview/preview-weighing';
import { enteredWeight } from '../say/entered';
import { amendsOf, type Amending } from './amending';
import type { Onward } from './doing';
import { Circumstances } from './circumstances';
import { inUnit } from './mass-units';
import { Preview } from './preview';
import css from './recording.module.css';
import { SavedWeighing } from './saved-weighing';
import { scaleFor } from './scale-for';
import { useDelivery } from './use-delivery';
import { useInstrument } from './use-instrument';
import { useTakenAt } from './use-taken-at';
import { WeightKeypad } from './weight-keypad';
import type { VerdictOn } from '../preview/verdict-on';

type Target = Lot['targets'][number];
type WeighIngredientProps = { lot: Lot; target: Target; amending?: Amending; onNext?: Onward; onClose: () => void };

export function WeighIngredient({ lot, target, amending, onNext, onClose }: WeighIngredientProps) {
  const say = useSay('lot-forms');
  const told = useSpoken('lot-forms');
  const { units } = useShop();
  const recording = useRecording(weighIn);
  const takenAt = useTakenAt(amending);
  const instrument = useInstrument('scale');
  const delivery = useDelivery(lot, target.itemId);
  const { data: known } = useQuery(ask(listItems, {}));
  const [kept, setKept] = useState<EnteredMass>();

  const percent = delivery.chosen?.fractionPercent ?? known?.items.find(({ itemId }) => itemId === target.itemId)?.fractionPercent;
  const preview = (weight: EnteredMass): VerdictOn[] =>
    percent === undefined ? [] : previewWeighing(lot, { target, weight, percent }, amending?.id);
  const weighed = (weight: EnteredMass) => say('item-weight', { item: target.itemName, weight: enteredWeight(weight) });
  const save = (weight: EnteredMass, sure: boolean) => {
    setKept(weight);
    return recording.save(
      {
        weighingId: recording.id,
        lotId: lot.lotId,
        itemId: target.itemId,
        receiptId: delivery.chosen?.receiptId,
        weight,
        instrumentId: instrument.chosen?.instrumentId,
        takenAt: takenAt.toRecord(),
        sure: sure || isSureOf(recording.refused, kept, weight) || undefined,
        ...amendsOf(amending),
      },
      say('what-in-lot', { what: weighed(weight), lot: lot.code }),
    );
  };

  if (recording.saved && kept) {
    return (
      <SavedWeighing
        lot={lot}
        ingredient={target.itemName}
        what={weighed(kept)}
        saved={recording.saved}
        preview={preview(kept)}
        onNext={onNext}
        onClose={onClose}
      />
    );
  }
  const scale = scaleFor(lot, target, units, say, amending?.id);
  return (
    <Dialog title={target.itemName} onClose={onClose}>
      <div className={css.entry}>
        <Circumstances takenAt={takenAt} instrument={instrument} delivery={delivery} />
        <WeightKeypad
          label={(unit) =>
            target.targetGrams === undefined
              ? say('weight')
              : say('weight-target', { weight: inUnit(target.targetGrams, unit, inward(target)) })
          }
          units={scale.units}
          limit={(unit) => <Allowed target={target} unit={unit} />}
          previous={(unit) => (target.weighedGrams > 0 ? say('is-in', { weight: inUnit(target.weighedGrams, unit) }) : undefined)}
          preview={(weight) => <Preview verdicts={preview(weight)} />}
          ask={scale.ask}
          error={recording.refused?.words}
          busy={recording.busy}
          onSave={(weight, sure) => void save(weight, sure)}
        />
        {target.onScale && <p className={css.flag}>{codedText(told, target.onScale)}</p>}
        {isToxic(target) && <Caution>{say('toxic')}</Caution>}
      </div>
    </Dialog>
  );
}

/** Towards the inside of the limit, should the pad's unit not hold the target exactly. */
const inward = ({ minGrams, maxGrams }: Target) => (maxGrams !== undefined ? 'down' : minGrams !== undefined ? 'up' : 'nearest');

/** Nitrite and nitrate make a curing salt dangerous. */
const isToxic = ({ substance }: Target): boolean => substance === 'sodium nitrite' || substance === 'sodium nitrate';

/** Rounded inward, so that neither bound is passed by reading it. */
function Allowed({ target: { minGrams, maxGrams, printed }, unit }: { target: Target; unit: string }) {
  const say = useSay('lot-forms');
  if (minGrams === undefined && maxGrams === undefined) return null;
  return (
    <span className={css.limits}>
      {minGrams !== undefined && <span>{say('least', { weight: inUnit(minGrams, unit, 'up') })}</span>}
      {maxGrams !== undefined && <span>{say('most', { weight: inUnit(maxGrams, unit, 'down') })}</span>}
      <small>{printed ? say('for-meat-block-printed', { printed }) : say('for-meat-block')}</small>
    </span>
  );
}
