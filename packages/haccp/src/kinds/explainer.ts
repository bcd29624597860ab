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

/** One value or answer with its record; `at` in epoch ms. */
export type RecordedAlone = ReadAlone & { id?: string; at?: number; probe?: string };

/** What went into a lot of one substance, and on how much meat (femtograms). */
export type Weighed = { brought: readonly Brought[]; meat: readonly MeatIn[]; meatBlock: bigint };

/** All that is recorded at a control point, for whatever a limit is judged from. */
export type Recorded = {
  alone: readonly RecordedAlone[];
  series: Series;
  context: CurveContext;
  errors?: InstrumentErrors;
  /** Undefined while nothing is weighed. */
  weighed?: (substance: RestrictedSubstance) => Weighed;
};

/** The curve of the probe that governs, in the unit of its last reading. */
export type Governed = { verdict: Verdict; readings: readonly CurveReading[]; unit: TemperatureUnit; context: CurveContext };

/** How a kind of limit is explained and drawn. */
export type Explainer<Limit> = {
  explain: (limit: Limit, verdict: Verdict, recorded: Recorded) => WorkedOut;
  /** What nobody may leave out who shows it. */
  cautions: readonly Coded[];
  /**
   * Its figures as lines ruled across a curve, each with its label.
   * @param peak the hottest point of the curve: of a table the row it could satisfy is ruled
   */
  lines: (limit: Limit, unit: TemperatureUnit, peak: number) => LineDrawn[];
  /** Where the curve passes its figures. */
  crossings: (limit: Limit, own: readonly CurveReading[], context: CurveContext, unit: TemperatureUnit) => CrossingDrawn[];
  /** Its stages as stretches of time. */
  stretches: (limit: Limit, own: Governed) => StageDrawn[];
  /** Of a limit on a cook, the laws that kill is drawn by beside the usual ones; undefined of any other. */
  lawsOfKill: (limit: Limit) => readonly LethalitySet[] | undefined;
};
