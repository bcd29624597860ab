import { isColder } from '../../quantity/bound';
import { millisecondsOf, formatDuration } from '../../quantity/duration';
import { formatFromTo } from '../../quantity/format-from-to';
import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import { slipOfGap } from '../slips';
import type { BandTimeLimit } from './band-time-limit';

export const bandTime: Kind<BandTimeLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: false,
  unitsRead: () => DEGREES,
  say: ({ from, to, maxSeconds }, unit) => `${formatFromTo(from, to, unit)} within ${formatDuration(millisecondsOf(maxSeconds))} in all`,
  fault: ({ from, to }) => (isColder(from, to) ? undefined : 'The band does not end warmer than it begins.'),
  slips: (limit) => [...(limit.maxSeconds > 0 ? [] : ['The band has no time.']), ...slipOfGap(limit)],
  temperatures: ({ from, to }) => [from, to],
  ruled: ({ from, to }) => [from, to],
  rows: none,
};
