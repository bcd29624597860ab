import type { CoolingSoFar } from './cooling-so-far';
import { spansOf } from './stage-spans';
import { type StageSpan } from './stage-span';
import type { CurveContext } from '../../limits/curve-context';
import { judgeChillStart } from './judge-chill-start';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { notedRescue } from './noted-rescue';
import { findStage, straightNotes, type StageFound } from './cooling-findings';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Remark, Part, Verdict } from '../../limits/verdict';
import { RANK } from '../../limits/worst-verdict';

/**
 * In the worst case: from the last reading that may be at or above the upper bound to the first that is surely at or
 * below the lower one. The worst stage governs.
 */
export function judgeCoolingSoFar(cooling: CoolingSoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit } = cooling;
  if (!cooling.last) return nothingUsableIn(curveNotes);
  const last = cooling.last.warmer;
  const { unit } = last.temperature;
  const fault = limitFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [...curveNotes] };

  const spans = spansOf(cooling, context);
  const stages = spans.map((span, index) => findStage(span, limit, index, last, context));
  const chillStart = judgeChillStart(cooling, context, unit);
  const parts = chillStart ? [chillStart, ...stages] : stages;
  const governing = governingOf(parts);
  const running = stages.find((stage) => stage.running);
  return {
    kind: governing?.kind ?? 'undetermined',
    finding: governing?.finding ?? 'no-stages',
    figures: governing?.figures ?? {},
    spare: governing?.spare,
    parts: parts.map(partOf),
    notes: [...curveNotes, ...straightNotes(spans, unit), ...notedRescue(cooling, spans, last, context)],
    running: running?.running,
    still: governing?.kind === 'missed' && isGoingOn(spans, context) ? 'cooling' : undefined,
  };
}

const partOf = ({ kind, finding, figures, measure }: StageFound): Part => ({ kind, finding, figures, measure });

const isGoingOn = (spans: readonly StageSpan[], { ended }: CurveContext): boolean =>
  !ended && spans.some(({ endAt }) => endAt === undefined);

/** Of misses the one furthest over; every missed part is told. */
const governingOf = (parts: readonly StageFound[]): StageFound | undefined =>
  [...parts].sort((a, b) => RANK[a.kind] - RANK[b.kind] || lessSpare(a, b))[0];

/** Least to spare; of doubts the first in order of the process. */
const lessSpare = (a: StageFound, b: StageFound): number => (a.kind === 'undetermined' ? 0 : (a.spare ?? FAR) - (b.spare ?? FAR));

/** Stands for the margin of a miss by an unknown time: any other miss comes first. */
const FAR = Number.MAX_SAFE_INTEGER;
