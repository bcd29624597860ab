import type { Awaited } from '../forecast/awaited';
import type { InstrumentErrors } from '../instruments/instrument-errors';
import type { CookSeen } from '../limit-sets/judge-humidity-kept';
import type { HumidityKept } from '../limit-sets/humidity-kept';
import type { CurveContext } from '../limits/curve-context';
import type { Series } from '../limits/series';
import type { Remark, Verdict } from '../limits/verdict';
import type { CurveReading } from '../thermal/curve';
import type { AsKept, Instant } from '../thermal/instant';
import type { Attestation } from './attestation/judge-attestation';

/** Before the first reading of one probe; `error` on the common scale. */
type KnownOfProbe = { error: number; startAt?: number };
/** The verdict is computed only on demand. */
export type OwnCurve = { readings: readonly CurveReading[]; context: CurveContext; judged: () => Verdict };

/** For the core of a piece: keeps what a verdict needs and takes one reading at a time. */
export type CurveJudge<Limit, SoFar> = {
  begin(limit: Limit, known: KnownOfProbe): SoFar;
  /** Later than all before. */
  add(soFar: SoFar, instant: Instant): void;
  judge(soFar: SoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict;
  /** The copy goes on by itself. */
  copy(soFar: SoFar): SoFar;
  awaited(limit: Limit, own: OwnCurve): Awaited | undefined;
};

type ReadAt = AsKept & { at: number; probe?: string };

export type SeriesJudge<Limit> = {
  /** Grouped by kind. */
  readFrom: (series: Series) => (readonly ReadAt[])[];
  judge: (series: Series, limit: Limit, context: CurveContext) => Verdict;
};

export type ReadAlone = {
  read?: { value: number; unit: string };
  answer?: Attestation & { humidity?: HumidityKept };
};
/** Errors that the plan states, and the cook of a humidity answer. */
export type KnownAlone = { errors?: InstrumentErrors; cook?: CookSeen };

export type ReadingJudge<Limit> = (one: ReadAlone, limit: Limit, known: KnownAlone) => Verdict;
