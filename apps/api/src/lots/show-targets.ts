import type { Lot } from '@larderbook/contracts';
import { isOfKind, scaleFormula, scaleStepOf, targetOnScale, type RestrictedSubstance } from '@larderbook/haccp';
import { gramsOf } from '../platform/kept-weight';
import type { FormulaInUse } from '../products/formula-in-use';
import { boundsOfIngredient, ppmIn, type Bounds, type LimitWithin } from './bounds-of-ingredient';
import type { LotRows } from './lot-rows';
import type { WentIn } from './what-went-in';

type Target = Lot['targets'][number];
type Line = FormulaInUse['lines'][number];

export function showTargets({ formula, content, wentIn }: LotRows): Target[] {
  const targets = targetsOf(formula, wentIn);
  return formula.lines.map((line) => {
    const { itemId, itemName, part, percent, substance } = line;
    const aimed = targets.get(line);
    return {
      itemId,
      itemName,
      part,
      percent,
      substance,
      targetGrams: gramsIfAny(aimed),
      weighedGrams: gramsOf(massOf(itemId, part === 'meat' ? wentIn.inputs : wentIn.weighings)),
      ...(substance && restricted(line, substance, content, wentIn, aimed)),
    };
  });
}

/** Scales to the meat still to be seasoned; rework brings its own. */
export function targetsOf({ lines }: Pick<FormulaInUse, 'lines'>, { composition: { toSeason } }: WentIn): ReadonlyMap<Line, bigint> {
  if (toSeason === 0n) return new Map();
  const scaled = scaleFormula(
    lines.map((line) => ({ line, name: line.itemName, percent: line.percent })),
    toSeason,
  );
  return new Map(scaled.map(({ line, target }) => [line, target]));
}

const massOf = (itemId: string, entries: readonly { itemId?: string; mass: bigint }[]): bigint =>
  entries.reduce((sum, entry) => (entry.itemId === itemId ? sum + entry.mass : sum), 0n);

/** Rounds inward to the scale's step, so that exact weighing misses no limit. */
function restricted(line: Line, substance: RestrictedSubstance, content: Content, wentIn: WentIn, aimed?: bigint) {
  const bounds = boundsOn(line, substance, content, wentIn);
  const found = aimed === undefined ? {} : targetOnScale(aimed, bounds, stepFor(substance, content));
  return {
    targetGrams: gramsIfAny(found.target),
    onScale: found.because,
    minGrams: gramsIfAny(bounds.least),
    maxGrams: gramsIfAny(bounds.most),
    printed: bounds.printed,
    ppm: ppmIn(wentIn, substance),
  };
}

export function toWeighOf(line: Line, aimed: bigint | undefined, content: Content, wentIn: WentIn): bigint | undefined {
  const { substance } = line;
  if (!substance || aimed === undefined) return aimed;
  return targetOnScale(aimed, boundsOn(line, substance, content, wentIn), stepFor(substance, content)).target;
}

type Content = Pick<LotRows['content'], 'controlPoints'>;

const boundsOn = (line: Line, substance: RestrictedSubstance, content: Content, wentIn: WentIn): Bounds => {
  const ingredient = { itemId: line.itemId, percent: line.fractionPercent ?? 0, substance };
  return boundsOfIngredient(ingredient, limitsOn(substance, content), wentIn);
};

/** The coarsest scale of the control points of the substance. */
const stepFor = (substance: RestrictedSubstance, content: Content): bigint => {
  const [first = scaleStepOf(), ...more] = limitsOn(substance, content).map(({ errors }) => scaleStepOf(errors));
  return more.reduce((coarsest, step) => (step > coarsest ? step : coarsest), first);
};

const limitsOn = (substance: RestrictedSubstance, { controlPoints }: Content): LimitWithin[] =>
  controlPoints
    .filter(({ takenAs }) => takenAs === 'weighings')
    .flatMap(({ limits, errors }) =>
      limits.flatMap(({ limit }) => (isOfKind(limit, 'concentration') && limit.substance === substance ? [{ limit, errors }] : [])),
    );

const gramsIfAny = (mass: bigint | undefined): number | undefined => (mass === undefined ? undefined : gramsOf(mass));
