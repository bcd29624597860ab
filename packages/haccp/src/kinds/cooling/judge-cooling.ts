import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { addToCooling, beginCooling, type CoolingSoFar } from './cooling-so-far';
import { spansOf, type StageSpan } from './stage-spans';
import { instantOf } from '../../thermal/time-in-band';
import { errorOf, type CurveContext } from '../../limits/curve-context';
import { judgeChillStart } from './judge-chill-start';
import type { CoolingLimit } from './cooling-limit';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { sayRescue } from './say-rescue';
import { sayStage, sayStageMeasured, straightNotes, type SaidStage } from './say-cooling';
import { sayLimit } from '../../limits/say-limit';
import { UNUSABLE_ERROR, unusableSeries } from '../../limits/unusable-series';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Verdict } from '../../limits/verdict';
import { RANK } from '../../limits/worst-verdict';

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
export function judgeCoolingSoFar(cooling: CoolingSoFar, curveNotes: readonly string[], context: CurveContext): Verdict {
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
  const governing = governingOf(parts);
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
    still: governing?.kind === 'missed' && isGoingOn(spans, context) ? 'cooling' : undefined,
  };
}

const isGoingOn = (spans: readonly StageSpan[], { ended }: CurveContext): boolean =>
  !ended && spans.some(({ endAt }) => endAt === undefined);

/** The worst part; of a miss the one that is furthest over, which then speaks for every part that is missed. */
function governingOf(parts: readonly SaidStage[]): SaidStage | undefined {
  const [worst] = [...parts].sort((a, b) => RANK[a.kind] - RANK[b.kind] || lessSpare(a, b));
  const missed = parts.filter(({ kind }) => kind === 'missed');
  if (!worst || missed.length < 2) return worst;
  const because = missed.map((part) => part.because).join(' ');
  return { ...worst, because, next: missed.at(-1)?.next };
}

/** Among parts of one verdict: the one with the least to spare; of those in doubt the first in order of the process. */
const lessSpare = (a: SaidStage, b: SaidStage): number => (a.kind === 'undetermined' ? 0 : (a.spare ?? FAR) - (b.spare ?? FAR));

/** Of a stage that never began nobody knows by how much it is missed: any that is over comes before it. */
const FAR = Number.MAX_SAFE_INTEGER;
