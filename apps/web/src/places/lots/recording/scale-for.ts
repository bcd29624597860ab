import type { Lot } from '@larderbook/contracts';
import { massFromGrams, weightMeant, type EnteredMass } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import type { NumberQuestion, UnitChoice } from '../../../ui/plausible';
import { beginningWith, inUnit, massUnits, unitFor, type ShownUnits } from './mass-units';

type Target = Pick<Lot['targets'][number], 'itemId' | 'targetGrams' | 'weighedGrams'>;

/** For an ingredient without a target, before any meat is in. Common practice, no source. */
const usualGrams = 25_000;
/** Within this share of its target a weight needs no question; a part of it does. Common practice, no source. */
const near = 0.2;

/** The unit it is weighed in comes first. */
export function scaleFor(lot: Pick<Lot, 'weighings'>, target: Target, shown: ShownUnits, say: SayOf<'lot-forms'>, amends?: string) {
  const before = lot.weighings.filter(({ item, amendedBy }) => item.itemId === target.itemId && amendedBy === undefined);
  const corrected = before.find(({ weighingId }) => weighingId === amends);
  const { targetGrams = 0, weighedGrams } = target;
  const stillToWeigh = targetGrams - weighedGrams + (corrected?.weight.grams ?? 0);
  const last = corrected ?? before.at(-1);
  const first = last?.weight.unit ?? unitFor(targetGrams, shown);
  return {
    units: beginningWith(first, usualNear(stillToWeigh, targetGrams, shown)),
    ask: (weight: EnteredMass) => askBesideTarget(weight, [stillToWeigh, targetGrams], say),
  };
}

function usualNear(stillToWeigh: number, targetGrams: number, shown: ShownUnits): UnitChoice[] {
  if (targetGrams <= 0) return massUnits(shown, usualGrams);
  if (stillToWeigh <= targetGrams * near) return massUnits(shown, targetGrams * near);
  return massUnits(shown, stillToWeigh * (1 + near), stillToWeigh * (1 - near));
}

/** As for 1.06 g beside a target of 1.06 lb. */
export function askBesideTarget(weight: EnteredMass, targetsGrams: number[], say: SayOf<'lot-forms'>): NumberQuestion | undefined {
  const targets = targetsGrams.filter((grams) => grams > 0);
  const meant = weightMeant(
    weight,
    targets.map((grams) => massFromGrams(grams.toFixed(9))),
  );
  return meant && { because: say('to-be-weighed', { weight: inUnit(targets[0] ?? 0, meant.unit) }), meant: [meant] };
}
