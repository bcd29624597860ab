import { prepareCurve, type CurveReading } from '../thermal/curve';
import { addToCooling, beginCooling, type CoolingSoFar } from '../thermal/cooling-so-far';
import { spansOf } from '../thermal/stage-spans';
import { instantOf } from '../thermal/time-in-band';
import { errorOf, type CurveContext } from './curve-context';
import { judgeChillStart } from './judge-chill-start';
import type { CoolingLimit } from './limit';
import { limitFault } from './limit-fault';
import { nothingUsableIn } from './nothing-usable';
import { sayRescue } from './say-rescue';
import { sayStage, sayStageMeasured, straightNotes, type SaidStage } from './say-cooling';
import { sayLimit } from './say-limit';
import { UNUSABLE_ERROR, unusableSeries } from './unusable-series';
import { unusableLimit } from './unusable-limit';
import type { Verdict } from './verdict';
import { RANK } from './worst-verdict';

/** A whole series of one probe. */
export function judgeCooling(readings: readonly CurveReading[], limit: CoolingLimit, context: CurveContext): Verdict {
  const error = errorOf(context);
  if (error === undefined) return unusableSeries(limit, UNUSABLE_ERROR);
  const curve = prepareCurve(readings);
  const cooling = beginCooling(limit, { startAt: context.startAt, error });
  curve.colder.forEach((_, index) => addToCooling(cooling, instantOf(curve, index)));
  return judgeCoolingSoFar(cooling, curve.notes, context);
}

/**
 * Met when every stage reached its bound in its time in the worst case the readings allow: from the last reading at or
 * above the upper bound to the first at or below the lower one. The worst stage governs.
 */
export function judgeCoolingSoFar(
  cooling: CoolingSoFar,
  curveNotes: readonly string[],
  context: CurveContext,
): Verdict {
  const { limit } = cooling;
  if (!cooling.last) return nothingUsableIn(curveNotes, limit);
  const last = cooling.last.warmer;
  const { unit } = last.temperature;
  const fault = limitFault(limit);
  const shared = { limit: sayLimit(limit, unit), source: limit.source };
  if (fault) return { ...shared, ...unusableLimit(fault), notes: [...curveNotes] };

  const spans = spansOf(cooling, context);
  const stages = spans.map((span, index) => sayStage(span, limit, index, last, context));
  const chillStart = judgeChillStart(cooling, context, unit);
  const parts = chillStart ? [chillStart, ...stages] : stages;
  const governing = [...parts].sort((a, b) => RANK[a.kind] - RANK[b.kind] || lessSpare(a, b))[0];
  const running = stages.find((stage) => stage.running);

  return {
    limit: shared.limit,
    source: shared.source,
    kind: governing?.kind ?? 'undetermined',
    measured: spans.map((span) => sayStageMeasured(span, last)).join(', '),
    margin: governing?.margin,
    spare: governing?.spare,
    because: governing?.because ?? 'The limit has no stages.',
    next: governing?.next ?? running?.next,
    notes: [...curveNotes, ...straightNotes(spans, unit), ...sayRescue(cooling, spans, last, context)],
    running: running?.running,
  };
}

/**
 * Among stages of one verdict: all met, the tightest (what is met has its spare); otherwise the first in order of the
 * process.
 */
const lessSpare = (a: SaidStage, b: SaidStage): number =>
  a.kind === 'met' && b.kind === 'met' ? (a.spare as number) - (b.spare as number) : 0;
