import { errorOf, usableContext } from '../../limits/curve-context';
import { millisecondsOf } from '../../quantity/duration';
import { warmedBy } from '../../thermal/warmed-by';
import type { SeriesJudge } from '../judge';
import type { FreezingLimit } from './freezing-limit';
import { judgeFreezing } from './judge-freezing';

export const freezingJudge: SeriesJudge<FreezingLimit> = {
  readFrom: ({ temperatures }) => [temperatures],
  judge({ temperatures }, { read, longestGapSeconds }, context) {
    const { startAt, ended } = usableContext(context);
    const readings = warmedBy(errorOf(context) as number, temperatures);
    return judgeFreezing({ read, readings, startAt, ended }, millisecondsOf(longestGapSeconds));
  },
};
