import { judgeFormulation, type Formulation } from '../limits/judge-formulation';
import type { Source } from '../limits/source';
import type { Verdict, VerdictKind } from '../limits/verdict';
import { sayCondition, type Condition } from './condition';
import { sourceOf, type LimitRow } from './limit-set';
import type { ProductClass } from './product-class';

/** What is known of the lot. What is absent leaves its condition undetermined. */
export type LotFigures = Formulation & {
  product?: ProductClass;
  place?: string;
  /** Statements answered in the plan, by their words. */
  answered?: ReadonlyMap<string, boolean>;
};

export type JudgedConditions = { kind: VerdictKind; conditions: { condition: Condition; verdict: Verdict }[] };

/**
 * Whether a lot may use a row: every condition with its figures. One missed is missed; doubt about one is doubt about
 * the row; a row without conditions is met.
 */
export function judgeConditions(row: LimitRow, lot: LotFigures): JudgedConditions {
  const conditions = row.conditions.map((condition) => ({ condition, verdict: judge(condition, lot, sourceOf(row)) }));
  const kinds = conditions.map(({ verdict }) => verdict.kind);
  const kind = kinds.includes('missed') ? 'missed' : kinds.includes('undetermined') ? 'undetermined' : 'met';
  return { kind, conditions };
}

function judge(condition: Condition, lot: LotFigures, source: Source): Verdict {
  switch (condition.kind) {
    case 'product':
    case 'place':
      return oneOf(condition, lot[condition.kind], source);
    case 'statement':
    case 'support':
      return answered(condition, lot.answered?.get(condition.says), source);
    default:
      return judgeFormulation(condition, lot, source);
  }
}

function oneOf(condition: Condition & { among: readonly string[] }, own: string | undefined, source: Source): Verdict {
  const shared = { limit: sayCondition(condition), notes: [], source };
  if (own === undefined) {
    const because = `It is not said which ${condition.kind} this is.`;
    return { ...shared, kind: 'undetermined', measured: 'not said', because };
  }
  const fits = condition.among.includes(own);
  return {
    ...shared,
    kind: fits ? 'met' : 'missed',
    measured: own,
    because: `${own} is ${fits ? '' : 'not '}among them.`,
  };
}

function answered(condition: Condition & { says: string }, answer: boolean | undefined, source: Source): Verdict {
  const shared = { limit: condition.says, notes: [], source };
  if (answer === undefined) return { ...shared, kind: 'undetermined', measured: 'not answered', because: 'The plan does not answer this.' };
  return {
    ...shared,
    kind: answer ? 'met' : 'missed',
    measured: answer ? 'yes' : 'no',
    because: 'As the plan answers.',
  };
}
