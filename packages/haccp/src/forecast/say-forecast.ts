import { sayAbout } from '../quantity/duration';

/** What is known of an arrival; Infinity where it may never be. */
export type Expected = {
  best: number;
  earliest: number;
  latest: number;
  lastAt: number;
  by: number | undefined;
  target: string;
  way: 'cooling' | 'heating';
};

export type ExpectedState = 'on course' | 'at risk' | 'will miss' | 'expected';

type Said = { because: string; next?: string };

/** A forecast in words, with what to do about it. Times are from the last reading. */
export function sayExpected(expected: Expected, state: ExpectedState, takeMore: boolean): Said {
  const { best, earliest, latest, lastAt, by, target, way } = expected;
  const when = (instant: number) => (instant === Infinity ? 'perhaps never' : `in ${sayAbout(instant - lastAt)}`);
  const deadline = by === undefined ? '' : ` It must be there ${by > lastAt ? when(by) : 'already'}.`;
  const because =
    earliest === Infinity
      ? `At this temperature of the medium ${target} is never reached.`
      : `${target} is expected ${when(best)}, at the earliest ${when(earliest)}, at the latest ${when(latest)}.`;
  return { because: because + deadline, next: nextOf(state, takeMore, way) };
}

const COOL_FASTER = 'Cool it faster: colder medium, more air, smaller pieces.';

function nextOf(state: ExpectedState, takeMore: boolean, way: Expected['way']): string | undefined {
  const act = way === 'cooling' ? COOL_FASTER : 'Check the heat and the load.';
  if (state === 'will miss' || state === 'at risk') return takeMore ? `${act} Take more readings.` : act;
  return takeMore ? 'Take more readings.' : undefined;
}
