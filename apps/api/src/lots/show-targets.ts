import type { Lot } from '@larderbook/contracts';
import { scaleFormula, type ConcentrationLimit, type RestrictedSubstance } from '@larderbook/haccp';
import { gramsOf } from '../platform/kept-weight';
import type { FormulaInUse } from '../plan/formula-in-use';
import { boundsOfIngredient, ppmIn } from './bounds-of-ingredient';
import type { LotRows } from './lot-rows';
import type { WentIn } from './what-went-in';

type Target = Lot['targets'][number];
type Line = FormulaInUse['lines'][number];

/**
 * Every line of the formula: what to weigh for the meat that is in, what has been weighed, and the bounds of what is
 * restricted.
 */
export function showTargets({ formula, content, wentIn }: LotRows): Target[] {
  const targets = targetsOf(formula, wentIn);
  return formula.lines.map((line) => {
    const { itemId, itemName, part, percent, substance } = line;
    return {
      itemId,
      itemName,
      part,
      percent,
      substance,
      targetGrams: gramsIfAny(targets.get(line)),
      weighedGrams: gramsOf(massOf(itemId, part === 'meat' ? wentIn.inputs : wentIn.weighings)),
      ...(substance && restricted(line, substance, limitsOn(substance, content), wentIn)),
    };
  });
}

/** Scaled to the meat that is still to be seasoned; rework brings its own. */
export function targetsOf(
  { lines }: Pick<FormulaInUse, 'lines'>,
  { composition: { toSeason } }: WentIn,
): ReadonlyMap<Line, bigint> {
  if (toSeason === 0n) return new Map();
  const scaled = scaleFormula(
    lines.map((line) => ({ line, name: line.itemName, percent: line.percent })),
    toSeason,
  );
  return new Map(scaled.map(({ line, target }) => [line, target]));
}

const massOf = (itemId: string, entries: readonly { itemId?: string; mass: bigint }[]): bigint =>
  entries.reduce((sum, entry) => (entry.itemId === itemId ? sum + entry.mass : sum), 0n);

function restricted(
  { itemId, fractionPercent }: Line,
  substance: RestrictedSubstance,
  limits: ConcentrationLimit[],
  wentIn: WentIn,
) {
  const { least, most, printed } = boundsOfIngredient(
    { itemId, percent: fractionPercent ?? 0, substance },
    limits,
    wentIn,
  );
  return { minGrams: gramsIfAny(least), maxGrams: gramsIfAny(most), printed, ppm: ppmIn(wentIn, substance) };
}

const limitsOn = (substance: RestrictedSubstance, { controlPoints }: LotRows['content']): ConcentrationLimit[] =>
  controlPoints
    .filter(({ takenAs }) => takenAs === 'weighings')
    .flatMap(({ limits }) => limits.map(({ limit }) => limit))
    .filter((limit): limit is ConcentrationLimit => limit.kind === 'concentration' && limit.substance === substance);

const gramsIfAny = (mass: bigint | undefined): number | undefined => (mass === undefined ? undefined : gramsOf(mass));
