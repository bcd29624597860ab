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

/** The core of one probe and what is known before its first reading; the error on the common scale. */
type KnownOfProbe = { error: number; startAt?: number };
/** The curve of one probe; its verdict is worked out where it is asked for. */
export type OwnCurve = { readings: readonly CurveReading[]; context: CurveContext; judged: () => Verdict };

/** Of a limit on the core of a piece: what a verdict needs is kept, and grows by one reading at a time. */
export type CurveJudge<Limit, SoFar> = {
  begin(limit: Limit, known: KnownOfProbe): SoFar;
  /** Adds one reading, later than all before. */
  add(soFar: SoFar, instant: Instant): void;
  judge(soFar: SoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict;
  /** A second one that goes on by itself. */
  copy(soFar: SoFar): SoFar;
  /** What the curve has still to reach; undefined where nothing is awaited. */
  awaited(limit: Limit, own: OwnCurve): Awaited | undefined;
};

type ReadAt = AsKept & { at: number; probe?: string };

/** Of a limit on a series that is judged as a whole. */
export type SeriesJudge<Limit> = {
  /** The readings it is judged from, those of one kind together. */
  readFrom: (series: Series) => (readonly ReadAt[])[];
  judge: (series: Series, limit: Limit, context: CurveContext) => Verdict;
};

/** One value or answer as a person gave it. */
export type ReadAlone = {
  read?: { value: number; unit: string };
  answer?: Attestation & { humidity?: HumidityKept };
};
/** What the plan says of the instruments, and the cook that humidity was kept in. */
export type KnownAlone = { errors?: InstrumentErrors; cook?: CookSeen };

/** Of a limit that each value or answer is judged by alone. */
export type ReadingJudge<Limit> = (one: ReadAlone, limit: Limit, known: KnownAlone) => Verdict;
