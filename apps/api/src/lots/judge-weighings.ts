import type { ControlPoint, Judged } from '@larderbook/contracts';
import {
  carriedBy,
  isOfKind,
  isStated,
  judgeConcentration,
  shareWithin,
  type Composition,
  type ConcentrationLimit,
  type Extremes,
  type InstrumentErrors,
  type Portion,
  type RestrictedSubstance,
  type ScaleErrors,
  type Verdict,
} from '@larderbook/haccp';
import { judgedFor } from './judge-formulation';
import { scalesAt } from './scales-of';
import type { WentIn } from './what-went-in';

export function judgeWeighings(point: ControlPoint, wentIn: WentIn): Judged[] {
  const judged = point.limits.flatMap(({ limitId, limit }) => {
    if (!isOfKind(limit, 'concentration')) return [];
    return [{ limitId, limit, verdict: judgeSubstance(limit, wentIn, point.errors) }];
  });
  return judgedFor(judged, { ...wentIn, scales: wentIn.scales ?? scalesAt(point.errors) });
}

export const isWeighed = (point: ControlPoint, { weighings, composition }: WentIn): boolean =>
  point.limits.some(
    ({ limit }) =>
      isOfKind(limit, 'concentration') &&
      (composition.substances.has(limit.substance) || weighings.some(({ substance }) => substance === limit.substance)),
  );

/** Rework counts as the pure substance. Advice is about what was weighed. */
export function judgeSubstance(limit: ConcentrationLimit, wentIn: WentIn, errors?: InstrumentErrors): Verdict {
  const { weighings, reworked, composition } = wentIn;
  const { substance } = limit;
  const scales = scalesAt(errors);
  const carried = reworked
    .map((share): Portion => ({ mass: carriedBy(share, substance), percent: 100, name: share.code }))
    .filter(({ mass }) => mass > 0n);
  const weighed = weighings
    .filter((weighing) => weighing.substance === substance)
    .map(({ mass, percent, name }): Portion => ({ mass, percent: percent ?? NaN, name, error: scales.ingredient }));
  const verdict = judgeConcentration([...carried, ...weighed], composition.meat, limit, extremesOf(composition, substance, scales));
  if (carried.length === 0) return verdict;
  const reworks = carried.map(({ name }) => name).join(', ');
  const notes = [...verdict.notes, { code: 'counted-with-rework', figures: { reworks } }];
  return weighed.length === 0 && verdict.kind !== 'met' ? { ...verdict, notes, then: { code: 'weigh-or-hold' } } : { ...verdict, notes };
}

/** Includes rework's share; none where the plan states no error. */
const extremesOf = (composition: Composition, substance: RestrictedSubstance, scales: ScaleErrors): Extremes | 0n =>
  isStated(scales)
    ? {
        most: shareWithin(composition, substance, 'meat', scales, 1n),
        least: shareWithin(composition, substance, 'meat', scales, -1n),
      }
    : 0n;
