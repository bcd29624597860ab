import type { Finding, Lot } from '@larderbook/contracts';
import {
  asGiven,
  lossBesideExpected,
  massOf,
  offTarget,
  roundedMass,
  scaleStepOf,
  type Coded,
  type MassUnit,
  type Quantity,
} from '@larderbook/haccp';
import { looseIn, type LotWeights } from '../lots/lot-weights.queries';
import { sentence } from '../platform/account';
import { massOfGrams } from '../platform/kept-weight';

type Target = Lot['targets'][number];

export const weightFindings = (lot: Lot, weights: LotWeights, unit: MassUnit): Finding[] => [
  ...lot.targets.flatMap((target) => targetFinding(target, lot)),
  ...lossFinding(lot, weights, unit),
];

const flagged = (about: 'weighing' | 'weight', what: Coded[], next: Coded): Finding => ({
  about,
  kind: 'flagged',
  what,
  next: [next],
  blocks: false,
});

/** A limit that depends on the ingredient is judged at its control point. */
function targetFinding(target: Target, lot: Lot): Finding[] {
  const { part, itemName, weighedGrams } = target;
  if (weighedGrams > 0) return part === 'ingredient' ? offTargetFinding(target, lot) : [];
  if (part === 'meat' && lot.meatBlockGrams === 0) return [];
  const [what, next] =
    part === 'meat'
      ? [sentence('meat-not-put-in', { item: itemName }), sentence('put-it-in')]
      : [sentence('ingredient-not-weighed-in', { item: itemName }), sentence('weigh-it-in')];
  return [{ ...flagged('weighing', [what], next), kind: 'missing' }];
}

function offTargetFinding({ itemId, itemName, targetGrams, weighedGrams }: Target, lot: Lot): Finding[] {
  if (targetGrams === undefined) return [];
  const [target, weighed] = [massOfGrams(targetGrams), massOfGrams(weighedGrams)];
  const off = offTarget(target, weighed, stepOf(lot));
  if (off === 0n) return [];
  const parts = lot.weighings.filter(({ item, amendedBy, voided }) => item.itemId === itemId && !amendedBy && !voided);
  const unit = parts[0]?.weight.unit ?? 'g';
  const way = off < 0n ? 'little' : 'much';
  const figures = {
    item: itemName,
    weighed: roundedMass(weighed, unit),
    target: roundedMass(target, unit),
    off: roundedMass(off < 0n ? -off : off, unit),
  };
  const what =
    parts.length > 1
      ? sentence(`too-${way}-in-parts`, {
          ...figures,
          count: parts.length,
          parts: parts.map(({ weight }) => asGiven(weight.value, weight.unit)),
        })
      : sentence(`too-${way}-weighed-in`, figures);
  return [flagged('weighing', [what], sentence('void-or-correct-weighing'))];
}

/** Nothing finer than the coarsest scale of the plan can be weighed. */
const stepOf = ({ controlPoints }: Lot): bigint => {
  const steps = controlPoints.map(({ controlPoint }) => scaleStepOf(controlPoint.errors));
  return steps.reduce((coarsest, step) => (step > coarsest ? step : coarsest), scaleStepOf());
};

/** A count that found less explains nothing, so it is a loss too. */
const isLoss = ({ kind }: Lot['removals'][number]): boolean => kind.startsWith('loss in') || kind === 'counted difference';

/** Weighed or not; undefined before anything is packed. */
export function lossOf({ removals, formula }: Pick<Lot, 'removals' | 'formula'>, weights: LotWeights) {
  if (weights.packed === 0n) return undefined;
  const weighed = removals.filter(isLoss).reduce((sum, { weight }) => sum + massOf(weight), 0n);
  const lost = looseIn(weights) + weighed;
  return { lost, weighed, ...lossBesideExpected({ ...weights, lost, yieldPercent: formula.expectedYieldPercent }) };
}

type Loss = NonNullable<ReturnType<typeof lossOf>>;

/** A loss within the expected band is no finding. */
function lossFinding({ removals, formula }: Lot, weights: LotWeights, unit: MassUnit): Finding[] {
  const loss = lossOf({ removals, formula }, weights);
  if (!loss || loss.beyond === 0n) return [];
  const { lost, weighed, least, most, beyond } = loss;
  const figure = (mass: bigint) => roundedMass(mass, unit);
  const expected = { yield: asGiven(formula.expectedYieldPercent, '%'), least: figure(least), most: figure(most) };
  const went = lostOf(loss, { lost: figure(lost < 0n ? -lost : lost), wentIn: figure(weights.wentIn), weighed: figure(weighed) });
  return beyond > 0n
    ? [
        flagged(
          'weight',
          [went, sentence('more-gone-than-expected', { ...expected, beyond: figure(beyond) })],
          sentence('count-and-weigh-again'),
        ),
      ]
    : [flagged('weight', [went, sentence('more-left-than-expected', { ...expected, beyond: figure(-beyond) })], sentence('weigh-again'))];
}

type Lost = Record<'lost' | 'wentIn' | 'weighed', Quantity>;

function lostOf({ lost: loss, weighed: recorded, beyond }: Loss, { lost, wentIn, weighed }: Lost): Coded {
  if (loss < 0n && beyond <= 0n)
    return recorded > 0n
      ? sentence('more-than-went-in-recorded', { more: lost, wentIn, weighed })
      : sentence('more-than-went-in', { more: lost, wentIn });
  const much = beyond > 0n ? 'much' : 'little';
  return recorded > 0n ? sentence(`so-${much}-lost-recorded`, { lost, wentIn, weighed }) : sentence(`so-${much}-lost`, { lost, wentIn });
}
