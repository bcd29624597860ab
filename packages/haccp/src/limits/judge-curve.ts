import { doubtOfClock, inOrderOfArrival } from '../thermal/clock-doubt';
import { byProbe, isBesideCore, isSetAside, isUsableReading, type CurveReading } from '../thermal/curve';
import { speedOf, usableContext, type CurveContext, type KnownBefore } from './curve-context';
import { addBeside, addToProbe, addUsable, beginProbe, judgeProbe, type ProbeSoFar } from './judge-curve-probe';
import type { CurveLimit } from './limit';
import { beginLimit } from './one-limit-so-far';
import { unusableBefore, unusableSeries } from './unusable-series';
import type { Verdict } from './verdict';
import { named, worstOf } from './worst-by-name';

/**
 * The worst probe governs. Doubted readings count against the lot and never for it. Order is that of arrival, unless
 * readings carry it. Never throws.
 */
export const judgeCurve = (readings: readonly CurveReading[], limit: CurveLimit, context: CurveContext): Verdict =>
  judgeCurveByAll(readings, [limit], context)[0] as Verdict;

export function judgeCurveByAll(readings: readonly CurveReading[], limits: readonly CurveLimit[], context: CurveContext): Verdict[] {
  if (limits.length === 0) return [];
  const known = usableContext(context);
  const fault = unusableBefore(readings.length, known);
  if (fault) return limits.map(() => unusableSeries(fault));
  const probes = [...byProbe(readings)].map(([name, own]): NamedProbe => [name, probeOf(own, limits, known)]);
  return judgeProbes(probes, known);
}

export type NamedProbe = [name: string, probe: ProbeSoFar];

export function judgeProbes(probes: readonly NamedProbe[], context: CurveContext): Verdict[] {
  const inName = [...probes].sort(([a], [b]) => (a < b ? -1 : 1));
  const byProbes = inName.map(([name, probe]) => judgeProbe(probe, context).map((verdict) => named([name, verdict])));
  const [first] = byProbes as [Verdict[]];
  return first.map((_, limit) =>
    worstOf(
      byProbes.map((verdicts) => verdicts[limit] as Verdict),
      ['probe-governs', 'unnamed-governs'],
    ),
  );
}

/** `known` was checked before. */
export const beginCurveOf = (limits: readonly CurveLimit[], known: KnownBefore): ProbeSoFar =>
  beginProbe(
    limits.map((limit) => beginLimit(limit, known)),
    speedOf(known),
  );

/** Most series come in order and take one pass; others are sorted and begun again. */
function probeOf(readings: readonly CurveReading[], limits: readonly CurveLimit[], known: CurveContext): ProbeSoFar {
  const probe = beginCurveOf(limits, known);
  const asTheyCame = inOrderOfArrival(readings);
  for (const reading of asTheyCame) {
    if (!addToProbe(probe, reading)) return probeOfUnordered(asTheyCame, limits, known);
  }
  return probe;
}

/** The clock is examined before sorting. */
function probeOfUnordered(readings: readonly CurveReading[], limits: readonly CurveLimit[], known: CurveContext) {
  const probe = beginCurveOf(limits, known);
  const usable = readings.filter(isUsableReading);
  probe.setAside = readings.filter(isSetAside).length;
  probe.impossible = readings.length - usable.length - probe.setAside;
  probe.wasSorted = true;
  for (const reading of usable) doubtOfClock(probe.clock, reading);
  const inTime = [...readings.filter(isBesideCore), ...usable].sort((a, b) => a.at - b.at);
  for (const reading of inTime) {
    if (isSetAside(reading)) addBeside(probe, reading);
    else addUsable(probe, reading);
  }
  return probe;
}
