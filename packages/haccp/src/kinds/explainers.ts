import type { CriticalLimit } from '../limits/limit';
import { attestationExplainer } from './attestation/attestation-explainer';
import { bandTimeExplainer } from './band-time/band-time-explainer';
import { concentrationExplainer } from './concentration/concentration-explainer';
import { coolingExplainer } from './cooling/cooling-explainer';
import { degreeHoursExplainer } from './degree-hours/degree-hours-explainer';
import { dwellExplainer } from './dwell/dwell-explainer';
import type { Explainer } from './explainer';
import { figureExplainer } from './figure/figure-explainer';
import { freezingExplainer } from './freezing/freezing-explainer';
import { growthExplainer } from './growth/growth-explainer';
import type { LimitKind, LimitOf } from './kind';
import { lethalityExplainer } from './lethality/lethality-explainer';
import { rangeExplainer } from './range/range-explainer';
import { weightLossExplainer } from './weight-loss/weight-loss-explainer';

const explainers = {
  range: rangeExplainer,
  figure: figureExplainer,
  concentration: concentrationExplainer,
  dwell: dwellExplainer,
  cooling: coolingExplainer,
  bandTime: bandTimeExplainer,
  lethality: lethalityExplainer,
  growth: growthExplainer,
  degreeHours: degreeHoursExplainer,
  weightLoss: weightLossExplainer,
  freezing: freezingExplainer,
  attestation: attestationExplainer,
} satisfies { [K in LimitKind]: Explainer<LimitOf<K>> };

export const explainerOf = <Limit extends CriticalLimit>({ kind }: Limit): Explainer<Limit> =>
  explainers[kind] as unknown as Explainer<Limit>;
