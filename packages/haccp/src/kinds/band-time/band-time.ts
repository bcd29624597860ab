import { isColder } from '../../quantity/bound';
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
  fault: ({ from, to }) => (isColder(from, to) ? undefined : { code: 'band-not-warmer' }),
  slips: (limit) => [...(limit.maxSeconds > 0 ? [] : [{ code: 'band-no-time' } as const]), ...slipOfGap(limit)],
  temperatures: ({ from, to }) => [from, to],
  ruled: ({ from, to }) => [from, to],
  rows: none,
};
