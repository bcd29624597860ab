import { inDoubt } from './in-doubt';
import { judgeFormulation, type Formulation } from './judge-formulation';
import { isOfFormulation, sayLimitCondition, type FormulationCondition, type LimitCondition } from './limit-condition';
import type { Verdict } from './verdict';

type Judged = { condition: FormulationCondition; verdict: Verdict };

/**
 * A verdict on a limit that only some formulations may use. A condition that what went in does not meet makes it
 * missed, however good the readings are; doubt about one keeps it from being met. Every condition stands among the
 * notes with its figures. Statements are not judged: adopting the plan affirms them.
 */
export function underConditions(verdict: Verdict, conditions: readonly LimitCondition[] | undefined, known: Formulation): Verdict {
  const judged = (conditions ?? [])
    .filter(isOfFormulation)
    .map((condition): Judged => ({ condition, verdict: judgeFormulation(condition, known, verdict.source) }));
  if (judged.length === 0) return verdict;
  const noted = { ...verdict, notes: [...verdict.notes, ...judged.map(sayJudged)] };
  const missed = judged.find((one) => one.verdict.kind === 'missed');
  if (missed) return notAllowed(noted, missed);
  const unknown = judged.find((one) => one.verdict.kind === 'undetermined');
  return unknown && verdict.kind === 'met' ? notKnown(noted, unknown) : noted;
}

/** Readings that miss the limit keep their own sentence before this one. */
function notAllowed(verdict: Verdict, { condition, verdict: { measured, margin } }: Judged): Verdict {
  const isMissedAnyway = verdict.kind === 'missed';
  const asks = `This option may not be used: it asks for ${sayLimitCondition(condition)}, and there is ${measured}.`;
  return {
    ...verdict,
    kind: 'missed',
    measured: `${measured} for ${sayLimitCondition(condition)}; ${verdict.measured}`,
    margin: isMissedAnyway ? verdict.margin : margin,
    spare: isMissedAnyway ? verdict.spare : undefined,
    because: isMissedAnyway ? `${verdict.because} ${asks}` : asks,
    next: 'Hold the lot and follow the corrective action of the plan; judge it by an option for any product.',
  };
}

const notKnown = (verdict: Verdict, { condition, verdict: { because, next } }: Judged): Verdict =>
  inDoubt(verdict, `Whether this option may be used is not known: it asks for ${sayLimitCondition(condition)}. ${because}`, next);

const NOTHING = 'nothing usable';

/** "At least 100 ppm ingoing sodium nitrite on the meat block: met, 120 ppm, 20 ppm to spare." */
function sayJudged({ condition, verdict: { kind, measured, margin } }: Judged): string {
  const asked = sayLimitCondition(condition);
  const figures = measured === NOTHING ? [kind, 'no usable figure'] : [kind, measured, ...(margin ? [margin] : [])];
  return `${asked.charAt(0).toUpperCase()}${asked.slice(1)}: ${figures.join(', ')}.`;
}
