import { inDoubt } from './in-doubt';
import { judgeFormulation, type Formulation } from './judge-formulation';
import { isOfFormulation, type FormulationCondition } from './limit-condition';
import type { CriticalLimit } from './limit';
import { amountOf } from '../quantity/quantities';
import type { Coded, Figure, Figures, Found, Phrase, Verdict } from './verdict';

type Judged = { condition: FormulationCondition; verdict: Verdict };

/**
 * A missed formula condition makes the limit missed, however good the readings; doubt keeps it from being met.
 * Statements are not judged: adopting the plan affirms them.
 */
export function underConditions(verdict: Verdict, { conditions, source }: CriticalLimit, known: Formulation): Verdict {
  const judged = (conditions ?? [])
    .filter(isOfFormulation)
    .map((condition): Judged => ({ condition, verdict: judgeFormulation(condition, known, source) }));
  if (judged.length === 0) return verdict;
  const noted = { ...verdict, notes: [...verdict.notes, ...judged.map(notedCondition)] };
  const missed = judged.find((one) => one.verdict.kind === 'missed');
  if (missed) return notAllowed(noted, missed);
  const unknown = judged.find((one) => one.verdict.kind === 'undetermined');
  return unknown && verdict.kind === 'met' ? notKnown(noted, unknown) : noted;
}

/** Readings that miss the limit keep their own finding first. */
function notAllowed(verdict: Verdict, { condition, verdict: { figures } }: Judged): Verdict {
  const { read, by } = figures as { read: Figure; by: Figure };
  const missing: Found = { finding: 'formula-not-allowed', figures: { asked: asked(condition), there: read, by } };
  if (verdict.kind === 'missed') return { ...verdict, also: [missing], then: { code: 'judge-by-another-option' } };
  return { ...inDoubt(verdict, missing.finding, missing.figures), kind: 'missed', butFor: verdict.butFor ?? foundBy(verdict) };
}

const foundBy = ({ finding, figures, measure, parts }: Verdict): Verdict['butFor'] => ({ finding, figures, measure, parts });

const notKnown = (verdict: Verdict, { condition, verdict: { finding, figures } }: Judged): Verdict =>
  inDoubt(verdict, 'formula-not-known', {
    asked: asked(condition),
    why: { code: `${finding}.because`, figures: plainOf(figures) },
    next: { code: `${finding}.next`, figures: plainOf(figures) },
  });

/** "at least 100 ppm ingoing sodium nitrite on the meat block" */
function asked(condition: FormulationCondition): Phrase {
  const least = amountOf(condition.least, condition.kind === 'salt in water phase' ? '%' : 'ppm');
  return condition.kind === 'salt in water phase'
    ? { code: 'asks-salt-in-water-phase', figures: { least, formula: condition.formula } }
    : { code: `asks-${condition.kind}-on-${condition.per.replace(' ', '-')}`, figures: { least } };
}

/** Figures of a condition are never composed. */
const plainOf = (figures: Figures) => figures as Phrase['figures'];

const notedCondition = ({ condition, verdict: { kind, figures } }: Judged): Coded => ({
  code: `condition-${kind}`,
  figures: { asked: asked(condition), ...('read' in figures && figures) },
});
