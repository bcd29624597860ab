import type { LineDrawn, CrossingDrawn, StageDrawn } from '../explain/drawing';
import type { WorkedOut } from '../explain/explanation';
import type { RestrictedSubstance } from '../formula/restricted-substance';
import type { InstrumentErrors } from '../instruments/instrument-errors';
import type { LethalitySet } from '../lethality/lethality-set';
import type { CurveContext } from '../limits/curve-context';
import type { Series } from '../limits/series';
import type { Coded, Verdict } from '../limits/verdict';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import type { Brought, MeatIn } from './concentration/explain-concentration';
import type { ReadAlone } from './judge';

/** `at` in epoch ms. */
export type RecordedAlone = ReadAlone & { id?: string; at?: number; probe?: string };

/** Of one substance; meat in femtograms. */
export type Weighed = { brought: readonly Brought[]; meat: readonly MeatIn[]; meatBlock: bigint };

export type Recorded = {
  alone: readonly RecordedAlone[];
  series: Series;
  context: CurveContext;
  errors?: InstrumentErrors;
  /** Undefined while nothing is weighed. */
  weighed?: (substance: RestrictedSubstance) => Weighed;
};

/** Of the probe that governs, in the unit of its last reading. */
export type Governed = { verdict: Verdict; readings: readonly CurveReading[]; unit: TemperatureUnit; context: CurveContext };

export type Explainer<Limit> = {
  explain: (limit: Limit, verdict: Verdict, recorded: Recorded) => WorkedOut;
  /** Shown with every explanation. */
  cautions: readonly Coded[];
  /** @param peak hottest point of the curve: the row of a table it could satisfy is ruled */
  lines: (limit: Limit, unit: TemperatureUnit, peak: number) => LineDrawn[];
  crossings: (limit: Limit, own: readonly CurveReading[], context: CurveContext, unit: TemperatureUnit) => CrossingDrawn[];
  stretches: (limit: Limit, own: Governed) => StageDrawn[];
  /** For a limit on a cook: drawn beside the usual laws. */
  lawsOfKill: (limit: Limit) => readonly LethalitySet[] | undefined;
};
