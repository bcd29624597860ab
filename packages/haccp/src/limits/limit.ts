import type { AttestationLimit } from '../kinds/attestation/attestation-limit';
import type { BandTimeLimit } from '../kinds/band-time/band-time-limit';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { DegreeHoursLimit } from '../kinds/degree-hours/fermentation-limit';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { FreezingLimit } from '../kinds/freezing/freezing-limit';
import type { GrowthLimit } from '../kinds/growth/growth-limit';
import type { LethalityLimit } from '../kinds/lethality/lethality-limit';
import type { RangeLimit } from '../kinds/range/range-limit';
import type { WeightLossLimit } from '../kinds/weight-loss/weight-loss-limit';
import type { LimitCondition } from './limit-condition';

/** Absent where the limit may be used for anything. */
export type Conditioned = { conditions?: LimitCondition[] };

export type CriticalLimit = (ReadingLimit | WeighedLimit | SeriesLimit) & Conditioned;

export type ReadingLimit = RangeLimit | FigureLimit | AttestationLimit;

export type WeighedLimit = ConcentrationLimit;

export type SeriesLimit = CurveLimit | WholeLimit;

/** Temperatures of one product's core, reading by reading. */
export type CurveLimit = DwellLimit | CoolingLimit | BandTimeLimit | LethalityLimit | GrowthLimit;

export type WholeLimit = DegreeHoursLimit | WeightLossLimit | FreezingLimit;
