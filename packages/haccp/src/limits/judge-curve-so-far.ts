import type { CurveReading } from '../thermal/curve';
import { usableContext, type CurveContext, type KnownBefore } from './curve-context';
import { beginCurveOf, judgeProbes, type NamedProbe } from './judge-curve';
import { addToProbe, copyOfProbe, type ProbeSoFar } from './judge-curve-probe';
import type { CurveLimit } from './limit';
import { unusableBefore, unusableSeries } from './unusable-series';
import type { Found, Verdict } from './verdict';

/** Keeps what a verdict needs and not the readings, so its size is constant. */
export type CurveSoFar = {
  readonly limits: readonly CurveLimit[];
  readonly known: KnownBefore;
  probes: Map<string, ProbeSoFar>;
  readings: number;
  /** An earlier reading came late: only the whole curve can be judged. */
  isBroken: boolean;
};

export function beginCurve(limits: readonly CurveLimit[], known: KnownBefore = {}): CurveSoFar {
  const { startAt, instrumentError, piece, surroundings } = usableContext({ ended: false, ...known });
  return { limits, known: { startAt, instrumentError, piece, surroundings }, probes: new Map(), readings: 0, isBroken: false };
}

/** False when earlier than a reading of its probe: judge all with `judgeCurve` then, and begin again. */
export function addReading(curve: CurveSoFar, reading: CurveReading): boolean {
  const name = reading?.probe ?? '';
  const probe = curve.probes.get(name) ?? probeFor(curve);
  curve.probes.set(name, probe);
  curve.readings += 1;
  const isAdded = addToProbe(probe, reading);
  if (!isAdded) curve.isBroken = true;
  return isAdded;
}

/** The same verdicts that `judgeCurve` gives on all the readings. */
export function judgeSoFar(curve: CurveSoFar, context: Omit<CurveContext, keyof KnownBefore>): Verdict[] {
  const whole = Object.assign(usableContext(context), curve.known);
  const fault = unusableBefore(curve.readings, whole) ?? (curve.isBroken ? OUT_OF_ORDER : undefined);
  if (fault) return curve.limits.map(() => unusableSeries(fault));
  const probes = [...curve.probes].map(([name, probe]): NamedProbe => [name, copyOfProbe(probe)]);
  return judgeProbes(probes.length > 0 ? probes : [['', probeFor(curve)]], whole);
}

const OUT_OF_ORDER: Found = { finding: 'out-of-order', figures: {} };

const probeFor = ({ limits, known }: CurveSoFar): ProbeSoFar => beginCurveOf(limits, known);
