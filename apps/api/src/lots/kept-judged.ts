import type { ControlPoint, Judged } from '@larderbook/contracts';
import { RULES_VERSION, type RestrictedSubstance, type Verdict } from '@larderbook/haccp';
import { publishedConcentration } from '../products/published-concentration';

/** The limit is frozen in the plan, or published for a substance that no control point judges. */
type KeptJudged = { limitId: string; rulesVersion: number } & Verdict;

export const keptJudged = (judged: readonly Judged[]): KeptJudged[] =>
  judged.map(({ limitId, verdict }) => ({ limitId, rulesVersion: RULES_VERSION, ...verdict }));

const PUBLISHED = 'published-';

export const publishedLimitId = (substance: RestrictedSubstance): string => PUBLISHED + substance;

export function judgedAsKept(kept: unknown, points: readonly ControlPoint[]): Judged[] {
  return (kept as KeptJudged[]).flatMap(({ limitId, rulesVersion: _, ...verdict }) => {
    const limit = limitId.startsWith(PUBLISHED)
      ? publishedConcentration[limitId.slice(PUBLISHED.length) as RestrictedSubstance]
      : points.flatMap(({ limits }) => limits).find((one) => one.limitId === limitId)?.limit;
    return limit ? [{ limitId, limit, verdict }] : [];
  });
}
