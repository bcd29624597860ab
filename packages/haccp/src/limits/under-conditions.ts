import { inDoubt } from './in-doubt';
import { judgeFormulation, type Formulation } from './judge-formulation';
import { isOfFormulation, sayLimitCondition, type FormulationCondition } from './limit-condition';
import type { CriticalLimit } from './limit';
import type { Saying } from './told';
import type { Coded, Found, Verdict } from './verdict';

type Judged = { condition: FormulationCondition; verdict: Saying };

/**
 * A verdict on a limit that only some formulations may use. A condition that what went in does not meet makes it
 * missed, however good the readings are; doubt about one keeps it from being met. Every condition stands among the
 * notes with its figures. Statements are not judged: adopting the plan affirms them.
 */
export function underConditions(verdict: Verdict, { conditions, source }: CriticalLimit, known: Formulation): Verdict {
  const judged = (conditions ?? [])
    .filter(isOfFormulation)
    .map((condition): Judged => ({ condition, verdict: judgeFormulation(condition, known, source) }));
  if (judged.length === 0) return verdict;
  const noted = { ...verdict, notes: [...verdict.notes, ...judged.map(sayJudged)] };
  const missed = judged.find((one) => one.verdict.kind === 'missed');
  if (missed) return notAllowed(noted, missed);
  const unknown = judged.find((one) => one.verdict.kind === 'undetermined');
  return unknown && verdict.kind === 'met' ? notKnown(noted, unknown) : noted;
}

/** Readings that miss the limit keep their own finding before this one. */
function notAllowed(verdict: Verdict, { condition, verdict: { measured, margin } }: Judged): Verdict {
  const asked = sayLimitCondition(condition);
  const then: Coded = { code: 'judge-by-another-option' };
  const figures = { asked, there: measured };
  const missing: Found = { finding: 'formula-not-allowed', figures };
  if (verdict.kind === 'missed') return { ...verdict, also: [missing], then };
  const { finding = '', figures: by = {}, measure, parts } = withoutDoubt(verdict);
  return {
    ...inDoubt(verdict, 'formula-not-allowed', { ...figures, margin: margin as string }), // what is missed says by how much
    kind: 'missed',
    ...(finding && { butFor: { finding, figures: by, measure, parts } }),
  };
}

const withoutDoubt = (verdict: Verdict): Partial<Found> & Pick<Verdict, 'parts'> => verdict.butFor ?? verdict;

const notKnown = (verdict: Verdict, { condition, verdict: { because, next } }: Judged): Verdict =>
  inDoubt(verdict, 'formula-not-known', { asked: sayLimitCondition(condition), why: because, ...(next && { next }) });

const NOTHING = 'nothing usable';

/** "At least 100 ppm ingoing sodium nitrite on the meat block: met, 120 ppm, 20 ppm to spare." */
function sayJudged({ condition, verdict: { kind, measured, margin } }: Judged): string {
  const asked = sayLimitCondition(condition);
  const figures = measured === NOTHING ? [kind, 'no usable figure'] : [kind, measured, ...(margin ? [margin] : [])];
  return `${asked.charAt(0).toUpperCase()}${asked.slice(1)}: ${figures.join(', ')}.`;
}
