import { millisecondsOf } from '../../quantity/duration';
import { printedAllowing } from '../../quantity/printed-allowing';
import { printedIn, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CoolingSoFar } from './cooling-so-far';
import type { StartSoFar } from './cooling-start';
import type { CurveContext } from '../../limits/curve-context';
import { judgeChillingBegan } from './judge-chilling-began';
import type { StageFound } from './cooling-findings';
import type { Figures } from '../../limits/verdict';

/**
 * A product on the bench is not being chilled: only a recorded start shows chilling, or a core below the first bound in
 * time. An end of cooking that the readings contradict shows nothing but a miss. Undefined where the limit asks for no
 * start.
 */
export function judgeChillStart(
  { limit: { startWithinSeconds, stages }, starts, before, coldFrom, error }: CoolingSoFar,
  { startAt, now, chillingBegan }: CurveContext,
  unit: TemperatureUnit,
): StageFound | undefined {
  const [first] = stages;
  const [start] = starts;
  if (startWithinSeconds === undefined || !first || !start) return undefined;
  if (startAt === undefined) return doubt('chill-start-end-unknown');
  const within = millisecondsOf(startWithinSeconds);
  const upper = printedIn(first.from ?? first.to, unit);
  const recorded = chillingBegan && judgeChillingBegan(chillingBegan, { startAt, now, within, coldFrom, upper });
  if (before.isLate) return recorded?.kind === 'missed' ? recorded : doubt('chill-start-end-late');
  if (recorded) return recorded;
  const byCore = first.from ? judgeByFall(start, startAt, within, upper) : undefined;
  return byCore ?? notShown(within, chillingBegan?.askedAt, first.from && printedAllowing(first.from, unit, -error));
}

const doubt = (finding: string, figures: Figures = {}): StageFound => ({ kind: 'undetermined', finding, figures });

function judgeByFall(start: StartSoFar, startAt: number, within: number, from: Quantity): StageFound | undefined {
  const spare = start.surely ? within - (start.surely.at - startAt) : -1;
  if (spare < 0) return undefined;
  return { kind: 'met', finding: 'chill-start-by-core', figures: { from, within: timeOf(within), spare: timeOf(spare) }, spare };
}

/** Without a control point for the start, only a core cold in time shows it. */
const notShown = (within: number, askedAt: string | undefined, from: Quantity | undefined): StageFound =>
  doubt('chill-start-not-shown', { within: timeOf(within), ...(askedAt !== undefined && { askedAt }), ...(from && { from }) });
