import { byProbe, type CurveReading } from '../thermal/curve';
import { usableContext, type CurveContext } from './curve-context';
import { judgeBandTime } from './judge-band-time';
import { judgeCooling } from './judge-cooling';
import { judgeDwell } from './judge-dwell';
import type { CurveLimit } from './limit';
import type { Verdict } from './verdict';
import { worstVerdict } from './worst-verdict';

/** A series of readings from one or several probes against its limit. Every probe must meet it: the worst governs. */
export function judgeCurve(readings: readonly CurveReading[], limit: CurveLimit, context: CurveContext): Verdict {
  const probes = [...byProbe(readings)].sort(([a], [b]) => (a < b ? -1 : 1));
  const known = usableContext(context);
  const verdicts = probes.map(([probe, own]) => named(judgeProbe(own, limit, known), probe));
  const worst = worstVerdict(verdicts);
  if (verdicts.length === 1) return worst;
  const governs = `${sayProbe(worst.probe)} governs: the worst of ${verdicts.length} probes.`;
  return { ...worst, notes: [governs, ...worst.notes] };
}

function judgeProbe(readings: readonly CurveReading[], limit: CurveLimit, context: CurveContext): Verdict {
  switch (limit.kind) {
    case 'dwell':
      return judgeDwell(readings, limit, context);
    case 'cooling':
      return judgeCooling(readings, limit, context);
    case 'bandTime':
      return judgeBandTime(readings, limit, context);
  }
}

const named = (verdict: Verdict, probe: string): Verdict => (probe ? { ...verdict, probe } : verdict);

const sayProbe = (probe: string | undefined): string => (probe ? `Probe ${probe}` : 'The probe without a name');
