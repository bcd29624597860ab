import type { Lot } from '@larderbook/contracts';
import { divide, doseFor, partsPerMillion, scaleFormula, type ConcentrationLimit, type RestrictedSubstance } from '@larderbook/haccp';
import { gramsOf } from '../platform/kept-weight';
import type { FormulaInUse } from '../plan/formula-in-use';
import type { LotRows } from './lot-rows';
import type { WentIn } from './what-went-in';

type Target = Lot['targets'][number];
type Line = FormulaInUse['lines'][number];

/** Every line of the formula: what to weigh for the meat that is in, what has been weighed, and the bounds of what is restricted. */
export function showTargets(formula: FormulaInUse, { content, wentIn }: LotRows, trimmedOf: (itemId: string) => bigint): Target[] {
  const targets = targetsOf(formula, wentIn);
  return formula.lines.map((line) => {
    const { itemId, itemName, part, percent, substance } = line;
    const target = targets.get(line);
    return {
      itemId, itemName, part, percent, substance,
      targetGrams: target === undefined ? undefined : gramsOf(target),
      weighedGrams: gramsOf(part === 'meat' ? trimmedOf(itemId) : weighedOf(itemId, wentIn)),
      ...(substance && boundsOf(line, substance, limitsOn(substance, content), wentIn)),
    };
  });
}

/** Scaled to the meat that is still to be seasoned; rework brings its own. */
export function targetsOf({ lines }: FormulaInUse, { composition: { toSeason } }: WentIn): ReadonlyMap<Line, bigint> {
  if (toSeason === 0n) return new Map();
  return new Map(scaleFormula(lines.map((line) => ({ line, name: line.itemName, percent: line.percent })), toSeason).map(({ line, target }) => [line, target]));
}

const weighedOf = (itemId: string, { weighings }: WentIn): bigint =>
  weighings.reduce((sum, weighing) => (weighing.itemId === itemId ? sum + weighing.mass : sum), 0n);

const limitsOn = (substance: RestrictedSubstance, content: LotRows['content']): ConcentrationLimit[] =>
  content.controlPoints
    .filter(({ takenAs }) => takenAs === 'weighings')
    .flatMap(({ limits }) => limits.flatMap(({ limit }) => (limit.kind === 'concentration' && limit.substance === substance ? [limit] : [])));

/** The narrowest bounds the plan sets, in grams of this ingredient altogether, less what other ingredients and rework bring of the substance. */
function boundsOf({ itemId, fractionPercent }: Line, substance: RestrictedSubstance, limits: ConcentrationLimit[], { composition, weighings }: WentIn) {
  const { meat, substances } = composition;
  const parts = partsPerMillion(fractionPercent ?? 0);
  const inLot = substances.get(substance) ?? 0n;
  if (meat === 0n || !parts) return {};
  const own = weighings.reduce((sum, one) => (one.itemId === itemId ? sum + one.mass * BigInt(partsPerMillion(one.percent ?? 0) ?? 0) : sum), 0n);
  const others = divide(inLot * million - own, BigInt(parts), 'up');

  const doses = limits.flatMap((limit) => ({ limit, ...doseFor(limit, meat, fractionPercent ?? 0) }));
  const least = doses.flatMap((dose) => dose.least ?? []).reduce<bigint | undefined>((most, one) => (most === undefined || one > most ? one : most), undefined);
  const narrowest = doses.reduce<(typeof doses)[number] | undefined>((now, one) => ((one.most ?? endless) < (now?.most ?? endless) ? one : now), doses[0]);
  return {
    minGrams: least === undefined ? undefined : gramsOf(atLeastNone(least - others)),
    maxGrams: narrowest?.most === undefined ? undefined : gramsOf(atLeastNone(narrowest.most - others)),
    printed: narrowest?.limit.printed,
    ppm: inLot === 0n ? undefined : Number(divide(inLot * million * 100n, meat, 'nearest')) / 100,
  };
}

const million = 1_000_000n;
const endless = 10n ** 60n;
const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);
