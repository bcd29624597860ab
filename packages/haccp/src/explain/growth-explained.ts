import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { CurveContext } from '../limits/curve-context';
import { growthUnderCure, hamOf } from '../growth/cured-growth';
import { estimateGrowth, type GrowthOutcome, type ProbeGrowth } from '../growth/estimate-growth';
import { GROWTH_CLAIM, growthClass, type GrowthClass, type GrowthFigures, type Unseen } from '../growth/growth';
import { growthFound } from '../growth/growth-found';
import type { GrowthSet, Species } from '../growth/growth-set';
import { coded } from '../limits/coded';
import type { Coded } from '../limits/verdict';
import type { CurveReading } from '../thermal/curve';
import { cautions } from '../calculators/cautions';

/** Shown as a coarse class; the exact figures are in the data. */
export type GrowthShown = {
  found: Coded;
  class: GrowthClass;
  across: GrowthClass;
  probe: string;
  set: GrowthSet;
  model: string;
  byStraightLines: GrowthFigures;
  atMost: GrowthFigures;
  unseen: readonly Unseen[];
};

/** C. perfringens while cooling: a screening for a person, never a verdict. */
export type GrowthExplained = {
  /** There is no open model for cured product. */
  as: 'uncured' | 'worst case, as if uncured';
  estimate?: GrowthShown;
  undetermined?: { because: Coded; next: Coded };
  claim: Coded;
  notes: Coded[];
  /** For cured product: no figure, why, what was published, and what to judge by. */
  underCure?: {
    because: Coded;
    published: { what: Coded; seen: Coded; citation: string; confirmed: boolean }[];
    next: Coded;
  };
  cautions: Coded[];
};

export function explainGrowth(
  readings: readonly CurveReading[],
  limits: readonly CoolingLimit[],
  species: Species | 'mixed or unknown',
  isCured: boolean,
  context: CurveContext,
): GrowthExplained | undefined {
  if (limits.length === 0) return undefined;
  const cured = isCured ? growthUnderCure(readings, species, context) : undefined;
  const outcome = cured?.worstCase.growth ?? estimateGrowth(readings, species, { cookingEnded: context.startAt });
  return {
    as: cured ? cured.worstCase.as : 'uncured',
    ...shown(outcome),
    claim: coded(GROWTH_CLAIM),
    notes: [...outcome.notes],
    underCure: cured && {
      because: coded('no-open-model'),
      published: cured.published.map((observation) => ({
        what: hamOf(observation),
        seen: observation.seen,
        citation: `${observation.source.citation}, ${observation.source.edition}`,
        confirmed: observation.source.confirmed,
      })),
      next: coded('judge-by-stages-and-cure'),
    },
    cautions: [cautions.model],
  };
}

const shown = (outcome: GrowthOutcome): Pick<GrowthExplained, 'estimate' | 'undetermined'> =>
  outcome.kind === 'estimate' ? { estimate: toShow(outcome.highest) } : { undetermined: { because: outcome.because, next: outcome.next } };

const toShow = (growth: ProbeGrowth): GrowthShown => ({
  found: growthFound(growth),
  class: growthClass(growth.byStraightLines.withLag),
  across: growthClass(growth.atMost.withLag),
  probe: growth.probe,
  set: growth.set,
  model: growth.model,
  byStraightLines: growth.byStraightLines,
  atMost: growth.atMost,
  unseen: growth.unseen,
});
