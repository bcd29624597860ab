import { judgeFormulation, type Formulation } from '../limits/judge-formulation';
import type { Source } from '../limits/source';
import type { Verdict, VerdictKind } from '../limits/verdict';
import type { Condition } from './condition';
import { sourceOf, type LimitRow } from './limit-set';
import type { ProductClass } from './product-class';

/** An absent figure leaves its condition undetermined. */
export type LotFigures = Formulation & {
  product?: ProductClass;
  place?: string;
  /** By their words, as the plan answers them. */
  answered?: ReadonlyMap<string, boolean>;
};

export type JudgedConditions = { kind: VerdictKind; conditions: { condition: Condition; verdict: Verdict }[] };

/** One missed is missed; one in doubt is doubt about the row; no conditions are met. */
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
      return oneOf(condition, lot[condition.kind]);
    case 'statement':
    case 'support':
      return answered(lot.answered?.get(condition.says));
    default:
      return judgeFormulation(condition, lot, source);
  }
}

function oneOf({ kind, among }: Condition & { among: readonly string[] }, own: string | undefined): Verdict {
  if (own === undefined) return { kind: 'undetermined', finding: `${kind}-not-said`, figures: {}, notes: [] };
  const fits = among.includes(own);
  return { kind: fits ? 'met' : 'missed', finding: fits ? 'among-them' : 'not-among-them', figures: { own }, notes: [] };
}

function answered(answer: boolean | undefined): Verdict {
  if (answer === undefined) return { kind: 'undetermined', finding: 'plan-does-not-answer', figures: {}, notes: [] };
  return { kind: answer ? 'met' : 'missed', finding: answer ? 'plan-says-yes' : 'plan-says-no', figures: {}, notes: [] };
}
