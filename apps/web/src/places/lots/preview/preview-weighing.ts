import type { Lot } from '@larderbook/contracts';
import { isOfKind, judgeConcentration, massFromGrams, massOf, scaleErrorOf, type EnteredMass, type Portion } from '@larderbook/haccp';
import type { VerdictOn } from './verdict-on';

type Target = Lot['targets'][number];

/** Not recorded yet; `percent` is of the restricted substance in the ingredient. */
export type NewWeighing = { target: Target; weight: EnteredMass; percent: number };

/** The weighing is added, or replaces the one it amends. */
export function previewWeighing(lot: Lot, { target, weight, percent }: NewWeighing, amends?: string): VerdictOn[] {
  const added = { mass: massOf(weight), percent, name: target.itemName };
  const portions = [...portionsIn(lot, { target, percent }, amends), added];
  const meat = massFromGrams(lot.meatBlockGrams.toFixed(9));
  return lot.controlPoints.flatMap(({ controlPoint: { limits, errors } }) =>
    limits.flatMap(({ limit }) => {
      if (!isOfKind(limit, 'concentration') || limit.substance !== target.substance) return [];
      const error = scaleErrorOf(errors?.mass);
      const within = portions.map((portion) => ({ ...portion, error }));
      return [{ ...judgeConcentration(within, meat, limit, scaleErrorOf(errors?.meat) * timesPutIn(lot)), on: limit }];
    }),
  );
}

const timesPutIn = ({ inputs }: Lot): bigint => BigInt(inputs.filter(({ amendedBy }) => amendedBy === undefined).length);

/** An unsent weighing has no content of its own yet. */
function portionsIn(lot: Lot, { target, percent }: Omit<NewWeighing, 'weight'>, amends: string | undefined): Portion[] {
  const carriers = new Set(lot.targets.filter(({ substance }) => substance === target.substance).map(({ itemId }) => itemId));
  return lot.weighings.flatMap(({ weighingId, item, weight, fractionPercent, amendedBy }) => {
    const content = fractionPercent ?? (item.itemId === target.itemId ? percent : undefined);
    const counts = carriers.has(item.itemId) && amendedBy === undefined && weighingId !== amends;
    return counts && content !== undefined ? [{ mass: massOf(weight), percent: content, name: item.name }] : [];
  });
}
