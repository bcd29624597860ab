import { saltInWaterPhase } from '../formula/brine';
import type { Composition } from '../formula/composition';
import type { Ratio } from '../formula/curing-species';
import { isFault, type Worked } from '../formula/fault';
import type { FigureLimit } from '../formula/figure-limit';
import { judgeFigure } from '../formula/judge-figure';
import type { RestrictedSubstance, Source } from '../limits/limit';
import type { Verdict, VerdictKind } from '../limits/verdict';
import { sayCondition, type Condition } from './condition';
import { sourceOf, type LimitRow } from './limit-set';
import type { ProductClass } from './product-class';

/** What is known of the lot. What is absent leaves its condition undetermined. */
export type LotFigures = {
  product?: ProductClass;
  place?: string;
  composition?: Composition;
  /** Salt and water as weighed in or analysed, in one unit. */
  salt?: bigint;
  water?: bigint;
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
      return oneOf(condition, lot.product, condition.among, source);
    case 'place':
      return oneOf(condition, lot.place, condition.among, source);
    case 'statement':
      return answered(condition, lot.answered?.get(condition.says), source);
    case 'nitrite':
      return atLeast(condition, ingoing('sodium nitrite', condition.per, lot.composition), 'ppm', source);
    case 'accelerator':
      return atLeast(condition, ingoing('sodium erythorbate', condition.per, lot.composition), 'ppm', source);
    case 'salt in water phase':
      return atLeast(condition, phase(lot, condition.formula), '%', source);
  }
}

function atLeast(
  condition: Condition & { least: number },
  figure: Worked<Ratio> | undefined,
  unit: 'ppm' | '%',
  source: Source,
): Verdict {
  const limit: FigureLimit = { kind: 'figure', of: ofWhat[condition.kind], unit, min: condition.least, source };
  return judgeFigure(figure && !isFault(figure) ? figure : undefined, limit);
}

const ofWhat: Record<Condition['kind'], string> = {
  product: 'product',
  place: 'place',
  statement: 'statement',
  nitrite: 'ingoing sodium nitrite',
  accelerator: 'ingoing erythorbate or ascorbate',
  'salt in water phase': 'salt in the water phase',
};

/** Without a composition nothing is known; with one, what was not weighed in is none. */
function ingoing(substance: RestrictedSubstance, per: 'meat block' | 'batch', composition: Composition | undefined) {
  if (!composition) return undefined;
  const base = per === 'meat block' ? composition.meat : composition.all;
  return { numerator: (composition.substances.get(substance) ?? 0n) * 1_000_000n, denominator: base };
}

const phase = ({ salt, water }: LotFigures, formula: Parameters<typeof saltInWaterPhase>[2]) =>
  salt === undefined || water === undefined ? undefined : saltInWaterPhase(salt, water, formula);

function oneOf(condition: Condition, own: string | undefined, among: readonly string[], source: Source): Verdict {
  const shared = { limit: sayCondition(condition), notes: [], source };
  if (own === undefined) {
    const because = `It is not said which ${ofWhat[condition.kind]} this is.`;
    return { ...shared, kind: 'undetermined', measured: 'not said', because };
  }
  const fits = among.includes(own);
  return {
    ...shared,
    kind: fits ? 'met' : 'missed',
    measured: own,
    because: `${own} is ${fits ? '' : 'not '}among them.`,
  };
}

function answered(condition: Condition & { says: string }, answer: boolean | undefined, source: Source): Verdict {
  const shared = { limit: condition.says, notes: [], source };
  if (answer === undefined)
    return { ...shared, kind: 'undetermined', measured: 'not answered', because: 'The plan does not answer this.' };
  return {
    ...shared,
    kind: answer ? 'met' : 'missed',
    measured: answer ? 'yes' : 'no',
    because: 'As the plan answers.',
  };
}
