import type { Finding, Lot } from '@larderbook/contracts';
import { lossBesideExpected, massOf, offTarget, formatMass, formatPercent, scaleStepOf, type MassUnit } from '@larderbook/haccp';
import { looseIn, type LotWeights } from '../lots/lot-weights.queries';
import { massOfGrams } from '../platform/kept-weight';

type Target = Lot['targets'][number];

export const weightFindings = (lot: Lot, weights: LotWeights, unit: MassUnit): Finding[] => [
  ...lot.targets.flatMap((target) => targetFinding(target, lot)),
  ...lossFinding(lot, weights, unit),
];

const flagged = (about: 'weighing' | 'weight', what: string, next: string): Finding => ({
  about,
  kind: 'flagged',
  what,
  next,
  blocks: false,
});

/** A limit that depends on the ingredient is judged at its control point. */
function targetFinding(target: Target, lot: Lot): Finding[] {
  const { part, itemName, weighedGrams } = target;
  if (weighedGrams > 0) return part === 'ingredient' ? offTargetFinding(target, lot) : [];
  if (part === 'meat' && lot.meatBlockGrams === 0) return [];
  const [was, next] = part === 'meat' ? ['put in', 'Put it in'] : ['weighed in', 'Weigh it in'];
  const what = `${itemName} stands in the formula and was not ${was}.`;
  return [{ ...flagged('weighing', what, `${next}, or say in the statement why it was left out.`), kind: 'missing' }];
}

function offTargetFinding({ itemId, itemName, targetGrams, weighedGrams }: Target, lot: Lot): Finding[] {
  if (targetGrams === undefined) return [];
  const [target, weighed] = [massOfGrams(targetGrams), massOfGrams(weighedGrams)];
  const off = offTarget(target, weighed, stepOf(lot));
  if (off === 0n) return [];
  const parts = lot.weighings.filter(({ item, amendedBy, voided }) => item.itemId === itemId && !amendedBy && !voided);
  const unit = parts[0]?.weight.unit ?? 'g';
  const inParts =
    parts.length > 1 ? `, in ${parts.length} weighings (${parts.map(({ weight }) => `${weight.value} ${weight.unit}`).join(', ')})` : '';
  const what =
    `${itemName}: ${formatMass(weighed, unit)} was weighed in for a target of ${formatMass(target, unit)}${inParts}, ` +
    `${formatMass(off < 0n ? -off : off, unit)} too ${off < 0n ? 'little' : 'much'}.`;
  return [flagged('weighing', what, 'Void or correct the weighing if it is wrong. If so much went in, say in the statement that it may.')];
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

/** A loss within the expected band is no finding. */
function lossFinding({ removals, formula }: Lot, weights: LotWeights, unit: MassUnit): Finding[] {
  const loss = lossOf({ removals, formula }, weights);
  if (!loss || loss.beyond === 0n) return [];
  const { lost, weighed, least, most, beyond } = loss;
  const say = (mass: bigint) => formatMass(mass, unit);
  const band = `The formula expects ${formatPercent(formula.expectedYieldPercent)} to be left, a loss of ${say(least)} to ${say(most)}`;
  const counted = weighed > 0n ? `, of it ${say(weighed)} recorded as loss` : '';
  return beyond > 0n
    ? [
        flagged(
          'weight',
          `${say(lost)} of ${say(weights.wentIn)} is lost${counted}. ${band}: ${say(beyond)} more is gone than it explains.`,
          tooMuch,
        ),
      ]
    : [
        flagged(
          'weight',
          `${sayLost(lost, say)} of ${say(weights.wentIn)} that went in${counted}. ${band}: ${say(-beyond)} more came out than it explains.`,
          tooLittle,
        ),
      ];
}

const sayLost = (lost: bigint, say: (mass: bigint) => string): string =>
  lost < 0n ? `${say(-lost)} more came out than all` : `Only ${say(lost)} is lost`;

const tooMuch = 'Count and weigh the packages again, record what was taken out, or say in the statement what became of it.';
const tooLittle = 'Weigh the packages again, and look for what went in without a record.';
