import { sayPrinted } from '../quantity/bound';
import { millisecondsOf, sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CoolingSoFar } from '../thermal/cooling-so-far';
import { fallOf, type StartSoFar } from '../thermal/cooling-start';
import { warmOver } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import type { SaidStage } from './say-cooling';

/**
 * The time from the end of cooking to the start of chilling, where the limit asks for one; undefined where it does not.
 * A product on the bench is not being chilled: only a recorded start shows that chilling began, or a core that was
 * below the first bound in time. An end of cooking that the readings contradict shows nothing but a miss.
 */
export function judgeChillStart(
  { limit: { startWithinSeconds, stages }, starts, before }: CoolingSoFar,
  { startAt, chillingBegan }: CurveContext,
  unit: TemperatureUnit,
): SaidStage | undefined {
  const [first] = stages;
  const [start] = starts;
  if (startWithinSeconds === undefined || !first || !start) return undefined;
  const within = millisecondsOf(startWithinSeconds);
  if (startAt === undefined) {
    const because = 'The time cooking ended is not recorded, so the start of chilling cannot be judged.';
    return { kind: 'undetermined', because, next: 'Enter the time cooking ended.' };
  }
  if (before.isLate && !(chillingBegan !== undefined && chillingBegan - startAt > within)) return LATE;
  if (chillingBegan !== undefined) return judgeRecordedStart(chillingBegan - startAt, within);
  return first.from ? judgeByFall(start, startAt, within, sayPrinted(first.from, unit)) : notShown(within);
}

const LATE: SaidStage = {
  kind: 'undetermined',
  because: 'The core was as hot before the recorded end of cooking as after it: the start of chilling cannot be timed.',
  next: 'Correct the time cooking ended, to when the core was hottest or before.',
};

function judgeByFall(start: StartSoFar, startAt: number, within: number, from: string): SaidStage {
  const fall = fallOf(start);
  const isBelow = fall !== undefined && warmOver(fall.below, start.from) < -start.error;
  const spare = isBelow ? within - (fall.at - startAt) : -1;
  if (spare < 0) return notShown(within, `A core read below ${from} in that time shows it. `);
  return {
    kind: 'met',
    spare,
    margin: `${sayDuration(spare)} to spare`,
    because: `The core was below ${from} within ${sayDuration(within)} of cooking.`,
  };
}

const notShown = (within: number, shownBy = ''): SaidStage => ({
  kind: 'undetermined',
  because: `Nothing shows that chilling began within ${sayDuration(within)} of the end of cooking.`,
  next: `${shownBy}Enter the time chilling began, or hold the lot.`,
});

function judgeRecordedStart(took: number, within: number): SaidStage {
  if (!Number.isFinite(took) || took < 0) {
    const because = 'Chilling is said to have begun before cooking ended.';
    return { kind: 'undetermined', because, next: 'Check the two times.' };
  }
  const spare = within - took;
  const because = `Chilling began ${sayDuration(took)} after cooking; ${sayDuration(within)} are allowed.`;
  return spare >= 0
    ? { kind: 'met', spare, margin: `${sayDuration(spare)} to spare`, because }
    : {
        kind: 'missed',
        spare,
        margin: `${sayDuration(spare)} too long`,
        because,
        next: 'Hold the lot and follow the corrective action of the plan.',
      };
}
