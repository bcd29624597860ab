import { readingAt, type CurveColumns } from '../thermal/columns';
import { byProbe, isOutOfOrder, isUsableReading, type CurveReading } from '../thermal/curve';
import { tooMany } from '../thermal/too-many';
import { errorOf, usableContext, type CurveContext } from './curve-context';
import { addToProbe, beginProbe, judgeProbe, type ProbeSoFar } from './judge-curve-probe';
import type { CurveLimit } from './limit';
import { beginLimit } from './one-limit-so-far';
import { unusableError, unusableSeries } from './unusable-series';
import type { Verdict } from './verdict';
import { worstVerdict } from './worst-verdict';

/**
 * A series of readings from one or several probes against its limit. Every probe must meet it: the worst governs.
 * Readings in doubt count against the lot and never for it. Nothing given makes it throw.
 */
export function judgeCurve(readings: readonly CurveReading[], limit: CurveLimit, context: CurveContext): Verdict {
  const fault = tooMany(readings.length);
  if (fault) return unusableSeries(limit, fault.because, fault.next);
  const known = usableContext(context);
  const error = errorOf(known);
  if (error === undefined) return unusableError(limit);
  const probes = [...byProbe(readings)].map(([name, own]): NamedProbe => {
    const probe = beginProbe(beginLimit(limit, known.startAt, error));
    for (const reading of inOrder(own, probe)) addToProbe(probe, reading);
    return [name, probe];
  });
  return judgeProbes(probes, known);
}

/** As `judgeCurve`, for a long series of one probe kept in columns. */
export function judgeColumns(columns: CurveColumns, limit: CurveLimit, context: CurveContext): Verdict {
  const known = usableContext(context);
  const error = errorOf(known);
  if (error === undefined) return unusableError(limit);
  const probe = beginProbe(beginLimit(limit, known.startAt, error));
  for (let index = 0; index < columns.at.length; index += 1) addToProbe(probe, readingAt(columns, index));
  return judgeProbes([[columns.probe ?? '', probe]], known);
}

export type NamedProbe = [name: string, probe: ProbeSoFar];

/** The worst of several probes, named. */
export function judgeProbes(probes: readonly NamedProbe[], context: CurveContext): Verdict {
  const inName = [...probes].sort(([a], [b]) => (a < b ? -1 : 1));
  const verdicts = inName.map(([name, probe]) => named(judgeProbe(probe, context), name));
  const worst = worstVerdict(verdicts);
  if (verdicts.length === 1) return worst;
  const governs = `${sayProbe(worst.probe)} governs: the worst of ${verdicts.length} probes.`;
  return { ...worst, notes: [governs, ...worst.notes] };
}

function inOrder(readings: readonly CurveReading[], probe: ProbeSoFar): readonly CurveReading[] {
  const usable = readings.every(isUsableReading) ? readings : readings.filter(isUsableReading);
  probe.impossible += readings.length - usable.length;
  if (!isOutOfOrder(usable)) return usable;
  probe.wasSorted = true;
  return [...usable].sort((a, b) => a.at - b.at);
}

const named = (verdict: Verdict, probe: string): Verdict => (probe ? { ...verdict, probe } : verdict);

const sayProbe = (probe: string | undefined): string => (probe ? `Probe ${probe}` : 'The probe without a name');
