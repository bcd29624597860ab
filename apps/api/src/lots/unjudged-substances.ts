import type { ControlPoint, Judged } from '@larderbook/contracts';
import type { RestrictedSubstance, Verdict } from '@larderbook/haccp';
import { pointsJudging } from '../products/points-judging';
import { publishedConcentration } from '../products/published-concentration';
import { ppmIn } from './bounds-of-ingredient';
import { judgeSubstance } from './judge-weighings';
import type { WentIn } from './what-went-in';

/** A restricted substance in a lot that its plan does not speak of, beside the published limit. Never met. */
export type Unjudged = { substance: RestrictedSubstance; judged: Judged };

/** Weighed in or brought by rework; of what the formula names there is none, or the lot would not have started. */
export function unjudgedSubstances(points: readonly ControlPoint[], wentIn: WentIn): Unjudged[] {
  const { weighings, composition } = wentIn;
  const carried = [...composition.substances].flatMap(([substance, mass]) => (mass > 0n ? [substance] : []));
  const held = new Set([...carried, ...weighings.flatMap(({ substance }) => substance ?? [])]);
  return [...held]
    .filter((substance) => pointsJudging(points, substance).length === 0)
    .map((substance) => {
      const limit = publishedConcentration[substance];
      return { substance, judged: { limitId: 'published', limit, verdict: inDoubt(substance, wentIn) } };
    });
}

function inDoubt(substance: RestrictedSubstance, wentIn: WentIn): Verdict {
  const ppm = ppmIn(wentIn, substance);
  const published = judgeSubstance(publishedConcentration[substance], wentIn);
  return {
    kind: 'undetermined',
    measured: ppm === undefined ? published.measured : `${ppm} ppm`,
    limit: published.limit,
    because: `There is ${substance} in this lot, and no control point of its plan judges it.`,
    next: 'Hold the lot and call the owner.',
    notes: [`By the published limit: ${published.kind}. ${published.because}`],
    source: published.source,
  };
}
