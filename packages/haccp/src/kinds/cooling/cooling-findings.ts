import { millisecondsOf } from '../../quantity/duration';
import { printedAllowing } from '../../quantity/printed-allowing';
import { degreesOf, timeOf } from '../../quantity/quantities';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import { GOING_ON, type StageFinding, type StageSpan } from './stage-span';
import { byStraightLines } from '../../limits/by-straight-lines';
import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { CoolingLimit, CoolingStage } from './cooling-limit';
import { stageOf } from './stage-of';
import type { Coded, Figures, Found, Verdict } from '../../limits/verdict';

export type StageFound = Found & Pick<Verdict, 'kind' | 'spare'> & { running?: Verdict['running'] };

const CODES: Record<StageFinding, string> = {
  'in time': 'cooling-in-time',
  'too late': 'cooling-too-late',
  'still above': 'cooling-still-above',
  'ended above': 'cooling-ended-above',
  'not shown': 'cooling-not-shown',
  gap: 'cooling-gap',
  'start unknown': 'cooling-start-unknown',
  'end of cooking late': 'cooling-end-of-cooking-late',
  'end of cooking unknown': 'cooling-end-of-cooking-unknown',
  'nothing since cooking': 'cooling-nothing-since-cooking',
  running: 'cooling-running',
  overdue: 'cooling-overdue',
  'not begun': 'cooling-not-begun',
};

export function findStage(span: StageSpan, limit: CoolingLimit, index: number, last: CurveReading, context: CurveContext): StageFound {
  const spare = span.deadline === undefined || !span.straight ? undefined : span.deadline - (span.endAt ?? last.at);
  const isGoingOn = GOING_ON.includes(span.finding) && span.endAt === undefined;
  const { unit } = last.temperature;
  const stage = stageOf(span.from, span.to, unit);
  const error = errorOf(context) as number; // otherwise nothing was judged
  const to = printedAllowing(span.to, unit, -error);
  return {
    kind: span.verdict,
    finding: CODES[span.finding],
    figures: { stage, to, ...figuresOf(span, limit, index, last, context, error), ...marginOf(span, spare) },
    measure: measureOf(span),
    spare,
    ...(isGoingOn && { running: { code: 'cooling', figures: { stage, to }, deadline: span.deadline, since: span.startAt } }),
  };
}

/** "130 → 80 °F in 1 h 20 min". */
function measureOf({ finding, startAt, endAt, straight, inAll }: StageSpan): string {
  if (finding === 'end of cooking unknown') return 'stage-not-timed';
  if (startAt === undefined) return 'stage-not-begun';
  if (!straight) return 'stage-not-read';
  if (endAt === undefined) return 'stage-so-far';
  return inAll ? 'stage-took-in-all' : 'stage-took';
}

/** Where they differ from the worst case that counts. */
export function straightNotes(spans: readonly StageSpan[], unit: TemperatureUnit): Coded[] {
  return spans.flatMap(({ from, to, startAt, endAt, straight }) => {
    if (startAt === undefined || endAt === undefined || straight?.endAt === undefined) return [];
    const estimate = straight.endAt - straight.startAt;
    return estimate >= endAt - startAt ? [] : [byStraightLines('cooling', estimate, { stage: stageOf(from, to, unit) })];
  });
}

function figuresOf(
  { from, startAt, endAt, deadline, gap, finding, straight }: StageSpan,
  { stages, longestGapSeconds }: CoolingLimit,
  index: number,
  last: CurveReading,
  { now }: CurveContext,
  error: number,
): Figures {
  const own = stages[index] as CoolingStage;
  return {
    ...(finding !== 'not begun' && { allowed: timeOf(millisecondsOf(own.withinSeconds)) }),
    ...(endAt === undefined && (straight || finding === 'ended above') && { reading: degreesOf(last.temperature) }),
    ...(from && { from: printedAllowing(from, last.temperature.unit, error) }),
    ...(startAt !== undefined && straight && { took: timeOf((endAt ?? last.at) - startAt) }),
    ...(gap !== undefined && { gap: timeOf(gap), tolerated: timeOf(millisecondsOf(longestGapSeconds)) }),
    ...(deadline !== undefined && leftUntil(deadline, finding, now, last.at)),
  };
}

/** From now, or from the last reading where there is one since cooking. */
function leftUntil(deadline: number, finding: StageFinding, now: number | undefined, lastAt: number): Figures {
  if (finding !== 'running' && finding !== 'nothing since cooking') return {};
  if (now !== undefined) return { left: timeOf(deadline - now) };
  return finding === 'running' ? { leftThen: timeOf(deadline - lastAt) } : {};
}

/** None in doubt: "undetermined, 30 min to spare" contradicts itself. What runs says what is left at its last reading. */
function marginOf({ finding, verdict }: StageSpan, spare: number | undefined): Figures {
  if (spare === undefined) return {};
  if (verdict === 'missed' && spare < 0) return { over: timeOf(spare) };
  if (finding === 'in time') return { spare: timeOf(spare) };
  return finding === 'running' ? { toGo: timeOf(spare) } : {};
}
