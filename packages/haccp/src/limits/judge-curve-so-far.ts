import type { CurveReading } from '../thermal/curve';
import { tooMany } from '../thermal/too-many';
import { errorOf, usableContext, type CurveContext } from './curve-context';
import { judgeProbes } from './judge-curve';
import { addToProbe, beginProbe, type ProbeSoFar } from './judge-curve-probe';
import type { CurveLimit } from './limit';
import { beginLimit } from './one-limit-so-far';
import { unusableError, unusableSeries } from './unusable-series';
import type { Verdict } from './verdict';

/** A curve that is judged as it grows. It keeps what a verdict needs and not the readings, so it never grows itself. */
export type CurveSoFar = {
  readonly limit: CurveLimit;
  readonly known: KnownBefore;
  readonly error: number | undefined;
  probes: Map<string, ProbeSoFar>;
  readings: number;
  /** A reading came that belongs before others: this state cannot take it in, only the whole curve can be judged. */
  isBroken: boolean;
};

/** What must be known before the first reading; the rest of the context is told when a verdict is asked for. */
export type KnownBefore = Pick<CurveContext, 'startAt' | 'instrumentError'>;

export function beginCurve(limit: CurveLimit, known: KnownBefore = {}): CurveSoFar {
  const { startAt, instrumentError } = usableContext({ ended: false, ...known });
  return { limit, known: { startAt, instrumentError }, error: errorOf(known), probes: new Map(), readings: 0, isBroken: false };
}

/**
 * Adds one reading, whatever it is. False when it is earlier than one of its probe already there: judge all the readings
 * with `judgeCurve` then, and begin again.
 */
export function addReading(curve: CurveSoFar, reading: CurveReading): boolean {
  const name = reading?.probe ?? '';
  let probe = curve.probes.get(name);
  if (!probe) {
    probe = beginProbe(beginLimit(curve.limit, curve.known.startAt, curve.error ?? 0));
    curve.probes.set(name, probe);
  }
  curve.readings += 1;
  const isAdded = addToProbe(probe, reading);
  if (!isAdded) curve.isBroken = true;
  return isAdded;
}

/** The verdict `judgeCurve` gives on all the readings added. */
export function judgeSoFar(curve: CurveSoFar, context: Omit<CurveContext, keyof KnownBefore>): Verdict {
  const { limit, known } = curve;
  if (curve.error === undefined) return unusableError(limit);
  const fault = tooMany(curve.readings);
  if (fault) return unusableSeries(limit, fault.because, fault.next);
  if (curve.isBroken) {
    return unusableSeries(limit, 'A reading is earlier than one before it.', 'Judge the whole series again.');
  }
  const none = beginProbe(beginLimit(limit, known.startAt, curve.error));
  const probes = curve.probes.size > 0 ? [...curve.probes] : [['', none] as [string, ProbeSoFar]];
  return judgeProbes(probes, { ...usableContext(context), ...known });
}
