import { saltInWaterPhase } from '../formula/brine';
import type { Composition } from '../formula/composition';
import type { Ratio } from '../formula/curing-species';
import { isFault, type OrFault } from '../formula/fault';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import { judgeFigure } from '../kinds/figure/judge-figure';
import { isStated, shareWithin, type ScaleErrors } from '../formula/within-scales';
import type { RestrictedSubstance } from '../formula/restricted-substance';
import type { Source } from './source';
import type { FormulationCondition } from './limit-condition';
import type { Figure, Figures, PlainPhrase, Verdict } from './verdict';

/** An absent figure leaves its condition undetermined. */
export type Formulation = {
  composition?: Composition;
  salt?: bigint;
  water?: bigint;
  /** The first ingredient of unknown salt and water. */
  lacking?: string | PlainPhrase;
  /** Errors of the scales; and the least salt in the most water within them. */
  scales?: ScaleErrors;
  least?: { salt: bigint; water: bigint };
};

const UNIT: Record<FormulationCondition['kind'], 'ppm' | '%'> = { nitrite: 'ppm', accelerator: 'ppm', 'salt in water phase': '%' };

/** Judged as an exact figure; `source` is the limit's. */
export function judgeFormulation(condition: FormulationCondition, known: Formulation, source: Source): Verdict {
  const { kind, least: min } = condition;
  const limit: FigureLimit = { kind: 'figure', of: kind, unit: UNIT[kind], min, source };
  const figure = figureOf(condition, known);
  const verdict = judgeFigure(figure && !isFault(figure) ? figure : undefined, limit);
  if (verdict.kind === 'met') return withinScales(verdict, condition, known, limit);
  if (verdict.kind !== 'undetermined') return verdict;
  const figures: Figures = kind === 'salt in water phase' && known.lacking !== undefined ? { lacking: known.lacking } : {};
  return { ...verdict, finding: `${kind.replaceAll(' ', '-')}-unknown`, figures };
}

/** Met as weighed, but not at the worst of the scales, is doubt. */
function withinScales(verdict: Verdict, condition: FormulationCondition, known: Formulation, limit: FigureLimit): Verdict {
  const figure = leastOf(condition, known);
  const least = figure && !isFault(figure) ? judgeFigure(figure, limit) : verdict;
  const { read, spare } = least.figures as { read: Figure; spare: Figure };
  if (least.kind === 'met') return { ...verdict, figures: { ...verdict.figures, spare } };
  return { ...verdict, kind: 'undetermined', finding: 'scales-too-coarse', figures: { ...verdict.figures, least: read } };
}

function leastOf(condition: FormulationCondition, { composition, scales, least }: Formulation): OrFault<Ratio> | undefined {
  if (condition.kind === 'salt in water phase') return least && saltInWaterPhase(least.salt, least.water, condition.formula);
  if (!composition || !scales || !isStated(scales)) return undefined;
  const substance = condition.kind === 'nitrite' ? 'sodium nitrite' : 'sodium erythorbate';
  const share = shareWithin(composition, substance, condition.per === 'meat block' ? 'meat' : 'all', scales, -1n);
  return { numerator: share.substance * 1_000_000n, denominator: share.base };
}

function figureOf(condition: FormulationCondition, known: Formulation): OrFault<Ratio> | undefined {
  switch (condition.kind) {
    case 'nitrite':
      return ingoing('sodium nitrite', condition.per, known.composition);
    case 'accelerator':
      return ingoing('sodium erythorbate', condition.per, known.composition);
    case 'salt in water phase':
      return known.salt === undefined || known.water === undefined
        ? undefined
        : saltInWaterPhase(known.salt, known.water, condition.formula);
  }
}

/** Without a composition nothing is known; with one, what was not weighed in is none. */
function ingoing(substance: RestrictedSubstance, per: 'meat block' | 'batch', composition: Composition | undefined) {
  if (!composition) return undefined;
  const base = per === 'meat block' ? composition.meat : composition.all;
  return { numerator: (composition.substances.get(substance) ?? 0n) * 1_000_000n, denominator: base };
}
