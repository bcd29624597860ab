import { prepareCurve, type CurveReading } from '../thermal/curve';
import { stageSpans } from '../thermal/stage-spans';
import type { CurveContext } from './curve-context';
import { judgeChillStart } from './judge-chill-start';
import type { CoolingLimit } from './limit';
import { limitFault } from './limit-fault';
import { nothingUsableIn } from './nothing-usable';
import { sayStage, sayStageMeasured, straightNotes, type SaidStage } from './say-cooling';
import { sayLimit } from './say-limit';
import { unusableLimit } from './unusable-limit';
import type { Verdict } from './verdict';
import { RANK } from './worst-verdict';

/**
 * Met when every stage reached its bound in its time in the worst case the readings allow: from the last reading at or
 * above the upper bound to the first at or below the lower one. The worst stage governs.
 */
export function judgeCooling(readings: readonly CurveReading[], limit: CoolingLimit, context: CurveContext): Verdict {
  const curve = prepareCurve(readings);
  const last = curve.warmer[curve.warmer.length - 1];
  if (!last) return nothingUsableIn(curve, limit);

  const { unit } = last.temperature;
  const shared = { limit: sayLimit(limit, unit), source: limit.source };
  const fault = limitFault(limit);
  if (fault) return { ...shared, ...unusableLimit(fault), notes: curve.notes };

  const spans = stageSpans(curve, limit, context);
  const stages = spans.map((span, index) => sayStage(span, limit, index, last, context));
  const chillStart = judgeChillStart(curve, limit, context, unit);
  const parts = chillStart ? [chillStart, ...stages] : stages;
  const governing = [...parts].sort((a, b) => RANK[a.kind] - RANK[b.kind] || lessSpare(a, b))[0];
  const running = stages.find((stage) => stage.running);

  return {
    ...shared,
    kind: governing?.kind ?? 'undetermined',
    measured: spans.map((span) => sayStageMeasured(span, last)).join(', '),
    margin: governing?.margin,
    spare: governing?.spare,
    because: governing?.because ?? 'The limit has no stages.',
    next: governing?.next ?? running?.next,
    notes: [...curve.notes, ...straightNotes(spans, unit)],
    running: running?.running,
  };
}

/** Among stages of one verdict: all met, the tightest; otherwise the first in order of the process. */
const lessSpare = (a: SaidStage, b: SaidStage): number =>
  a.kind === 'met' && b.kind === 'met' ? (a.spare ?? Infinity) - (b.spare ?? Infinity) : 0;
