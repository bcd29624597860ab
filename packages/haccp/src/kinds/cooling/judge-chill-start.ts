import { sayPrinted } from '../../quantity/bound';
import { millisecondsOf, sayDuration } from '../../quantity/duration';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CoolingSoFar } from './cooling-so-far';
import type { StartSoFar } from './cooling-start';
import type { CurveContext } from '../../limits/curve-context';
import { judgeChillingBegan } from './judge-chilling-began';
import type { SaidStage } from './say-cooling';

/**
 * The time from the end of cooking to the start of chilling, where the limit asks for one; undefined where it does not.
 * A product on the bench is not being chilled: only a recorded start shows that chilling began, or a core that was
 * below the first bound in time. An end of cooking that the readings contradict shows nothing but a miss.
 */
export function judgeChillStart(
  { limit: { startWithinSeconds, stages }, starts, before, coldFrom }: CoolingSoFar,
  { startAt, now, chillingBegan }: CurveContext,
  unit: TemperatureUnit,
): SaidStage | undefined {
  const [first] = stages;
  const [start] = starts;
  if (startWithinSeconds === undefined || !first || !start) return undefined;
  if (startAt === undefined) return END_UNKNOWN;
  const within = millisecondsOf(startWithinSeconds);
  const upper = sayPrinted(first.from ?? first.to, unit);
  const recorded = chillingBegan && judgeChillingBegan(chillingBegan, { startAt, now, within, coldFrom, upper });
  if (before.isLate) return recorded?.kind === 'missed' ? recorded : LATE;
  if (recorded) return recorded;
  const byCore = first.from ? judgeByFall(start, startAt, within, upper) : undefined;
  return byCore ?? notShown(within, chillingBegan?.askedAt, first.from && upper);
}

const END_UNKNOWN: SaidStage = {
  kind: 'undetermined',
  because: 'The time cooking ended is not recorded, so the start of chilling cannot be judged.',
  next: 'Enter the time cooking ended.',
};

const LATE: SaidStage = {
  kind: 'undetermined',
  because: 'The core was as hot before the recorded end of cooking as after it: the start of chilling cannot be timed.',
  next: 'Correct the time cooking ended, to when the core was hottest or before.',
};

function judgeByFall(start: StartSoFar, startAt: number, within: number, from: string): SaidStage | undefined {
  const spare = start.surely ? within - (start.surely.at - startAt) : -1;
  if (spare < 0) return undefined;
  return {
    kind: 'met',
    spare,
    margin: `${sayDuration(spare)} to spare`,
    because: `The core was below ${from} within ${sayDuration(within)} of cooking.`,
  };
}

const notShown = (within: number, askedAt: string | undefined, from: string | undefined): SaidStage => ({
  kind: 'undetermined',
  because: `Nothing shows that chilling began within ${sayDuration(within)} of the end of cooking.`,
  next: askedAt === undefined ? withoutAnswer(from) : toAnswer(askedAt, from),
});

const toAnswer = (askedAt: string, from: string | undefined): string =>
  `Answer “${askedAt}” with its time, or hold the lot.${from ? ` A core read below ${from} in that time shows it too.` : ''}`;

/** Where the plan has no control point that asks for it. */
const withoutAnswer = (from: string | undefined): string =>
  from
    ? `The plan does not ask when chilling began. Add a core read below ${from} in that time, or hold the lot.`
    : 'The plan does not ask when chilling began: hold the lot.';
