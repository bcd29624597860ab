import { timeToKill, type LethalitySoFar } from './lethality-so-far';
import { sayDegrees } from '../../quantity/degrees';
import { sayAbout, sayDuration } from '../../quantity/duration';
import type { Instant } from '../../thermal/instant';
import type { CurveContext } from '../../limits/curve-context';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { sayLogs, sayTarget } from './say-lethality-limit';
import { sayLimit } from '../../limits/say-limit';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Remark, Verdict } from '../../limits/verdict';

/** The sum of many floats: nearer to the target than this is not above it. */
const AS_GOOD_AS = 1e-9;
const NOTES = [
  'Model estimate: D and z were measured in other products; a factor of two to three is normal.',
  'Support for a process authority’s decision. Printed rows of time and temperature come first.',
];
type Said = Omit<Verdict, 'limit' | 'source' | 'notes'>;

/**
 * Met when the kill that is sure has reached the target: over each step the colder end, over a gap nothing. What
 * straight lines would give is shown and never meets it.
 */
export function judgeLethalitySoFar(cook: LethalitySoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit, last, hottest } = cook;
  if (!last || !hottest) return nothingUsableIn(curveNotes);
  const shared = { limit: sayLimit(limit, last.colder.temperature.unit), source: limit.source };
  const fault = limitFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [...curveNotes] };
  const straight = `By straight lines between the readings: ${sayLogs(cook.byStraightLines, limit.set)}.`;
  const thin = cook.byStraightLines - cook.sure >= 0.5 ? [straight] : [];
  return { notes: [...curveNotes, ...thin, ...NOTES], ...shared, ...decide(cook, context) };
}

function decide(cook: LethalitySoFar, context: CurveContext): Said {
  const { limit, sure, byStraightLines } = cook;
  const target = limit.log10 / 100;
  const measured = sayLogs(sure, limit.set);
  const spare = Math.floor((sure - target) * 100 - AS_GOOD_AS);
  if (sure - target > AS_GOOD_AS) {
    return { kind: 'met', measured, spare, because: `${measured} add up; ${sayTarget(limit)} are asked for.` };
  }
  const short = { measured, spare: Math.min(spare, -1), margin: `${sayAtLeast(target - sure)} short` };
  if (byStraightLines - target > AS_GOOD_AS) return { ...short, kind: 'undetermined', ...sayThin(cook) };
  return context.ended ? { ...short, kind: 'missed', ...sayEnded(cook) } : { ...short, ...sayRunning(cook, context) };
}

function sayThin({ gap, limit }: LethalitySoFar) {
  const because =
    gap > 0
      ? `There is no reading for ${sayDuration(gap)} of the heat; at most ${sayTolerated(limit)} may lie between two.`
      : `The readings are too far apart to be sure of ${sayTarget(limit)}.`;
  return { because, next: 'Add the readings in between from the logger, or hold the lot.' };
}

const sayEnded = ({ limit, hottest }: LethalitySoFar) => ({
  because: `The cook was ended before ${sayTarget(limit)}; the core was at most ${sayHottest(hottest)}.`,
  next: 'Keep heating, or hold the lot and follow the corrective action of the plan.',
});

function sayRunning(cook: LethalitySoFar, { now }: CurveContext) {
  const { limit, last, sure } = cook;
  const { at } = last as Instant;
  const left = timeToKill(cook, limit.log10 / 100 - sure);
  const age = (now ?? at) - at;
  const isOld = age > cook.longestGap;
  const next = isOld
    ? `Read the core now: the last reading is ${sayDuration(age)} old.`
    : left === undefined
      ? 'Keep heating: at this temperature nothing is counted yet.'
      : `Keep heating: ${sayAbout(left)} more at this temperature.`;
  return {
    kind: 'undetermined' as const,
    because: `${sayTarget(limit)} are not there yet.`,
    next,
    running: { stage: 'lethality', bound: sayTarget(limit), until: left === undefined ? undefined : at + left },
  };
}

/** Half logs, rounded up: what is short never sounds like less than it is. */
const sayAtLeast = (logs: number): string => `${Math.ceil(logs * 2) / 2} log`;
const sayTolerated = ({ longestGapSeconds }: LethalitySoFar['limit']): string => sayDuration(longestGapSeconds * 1000);
/** Only a cook with a reading is judged, and that has a hottest. */
const sayHottest = (hottest: LethalitySoFar['hottest']): string => sayDegrees((hottest as Instant).colder.temperature);
