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

/** What has to hold before a limit may be used at all; absent where it is for anything. */
export type Conditioned = { conditions?: LimitCondition[] };

export type CriticalLimit = (ReadingLimit | WeighedLimit | SeriesLimit) & Conditioned;

/** Limits that each value or answer is judged by alone. */
export type ReadingLimit = RangeLimit | FigureLimit | AttestationLimit;

/** Limits judged from everything weighed into a lot. */
export type WeighedLimit = ConcentrationLimit;

/** Limits judged from a series of readings rather than from one. */
export type SeriesLimit = CurveLimit | WholeLimit;

/** Limits judged from the temperatures of one product's core, reading by reading. */
export type CurveLimit = DwellLimit | CoolingLimit | BandTimeLimit | LethalityLimit | GrowthLimit;

/** Limits judged from a series as a whole. */
export type WholeLimit = DegreeHoursLimit | WeightLossLimit | FreezingLimit;
