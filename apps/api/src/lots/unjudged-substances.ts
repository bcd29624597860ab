import type { ControlPoint, Judged } from '@larderbook/contracts';
import type { Figure, Figures, RestrictedSubstance, Verdict } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { pointsJudging } from '../products/points-judging';
import { publishedConcentration } from '../products/published-concentration';
import { publishedLimitId } from './kept-judged';
import { ppmIn } from './bounds-of-ingredient';
import { judgeSubstance } from './judge-weighings';
import type { WentIn } from './what-went-in';

/** Shown beside the published limit and never met. */
type UnjudgedSubstance = { substance: RestrictedSubstance; judged: Judged };

/** The formula cannot bring such a substance, or the lot would not have started. */
export function unjudgedSubstances(points: readonly ControlPoint[], wentIn: WentIn): UnjudgedSubstance[] {
  const { weighings, composition } = wentIn;
  const carried = [...composition.substances].flatMap(([substance, mass]) => (mass > 0n ? [substance] : []));
  const held = new Set([...carried, ...weighings.flatMap(({ substance }) => substance ?? [])]);
  return [...held]
    .filter((substance) => pointsJudging(points, substance).length === 0)
    .map((substance) => {
      const limit = publishedConcentration[substance];
      return { substance, judged: { limitId: publishedLimitId(substance), limit, verdict: inDoubt(substance, wentIn) } };
    });
}

function inDoubt(substance: RestrictedSubstance, wentIn: WentIn): Verdict {
  const exact = ppmIn(wentIn, substance);
  const published = judgeSubstance(publishedConcentration[substance], wentIn);
  const { weighed } = published.figures;
  const ppm: Figure | undefined = exact === undefined ? weighed : { value: String(exact), unit: 'ppm' };
  const figures: Figures = ppm === undefined ? {} : { ppm };
  return {
    kind: 'undetermined',
    finding: 'not-in-the-plan',
    figures: { substance: { code: codeOf('substance', substance) }, ...figures },
    notes: [{ code: `published-${published.kind}`, figures }],
  };
}
