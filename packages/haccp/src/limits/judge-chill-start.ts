import { sayPrinted } from '../quantity/bound';
import { millisecondsOf, sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CoolingSoFar } from '../thermal/cooling-so-far';
import { fallOf } from '../thermal/cooling-start';
import { warmOver } from '../thermal/instant';
import type { CurveContext } from './curve-context';
import type { SaidStage } from './say-cooling';

/**
 * The time from the end of cooking to the start of chilling, where the limit asks for one; undefined where it does not.
 * Without a recorded start, a core already below the first bound in time shows that chilling had begun; a later one
 * shows nothing.
 */
export function judgeChillStart(
  { limit: { startWithinSeconds, stages }, starts }: CoolingSoFar,
  { startAt, chillingBegan }: CurveContext,
  unit: TemperatureUnit,
): SaidStage | undefined {
  const [first] = stages;
  const [start] = starts;
  if (startWithinSeconds === undefined || !first || !start) return undefined;
  const within = millisecondsOf(startWithinSeconds);
  const allowed = sayDuration(within);
  if (startAt === undefined) {
    const because = 'The time cooking ended is not recorded, so the start of chilling cannot be judged.';
    return { kind: 'undetermined', because, next: 'Enter the time cooking ended.' };
  }
  if (chillingBegan !== undefined) return judgeRecordedStart(chillingBegan - startAt, within);

  const fall = fallOf(start);
  const from = first.from ? sayPrinted(first.from, unit) : '';
  const isBelow = first.from !== undefined && fall !== undefined && warmOver(fall.below, start.from) < -start.error;
  if (isBelow && fall.at - startAt <= within) {
    const spare = within - (fall.at - startAt);
    return {
      kind: 'met',
      spare,
      margin: `${sayDuration(spare)} to spare`,
      because: `The core was below ${from} within ${allowed} of cooking.`,
    };
  }
  const because = `No reading shows that chilling began within ${allowed} of the end of cooking.`;
  return { kind: 'undetermined', because, next: 'Enter the time chilling began.' };
}

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
