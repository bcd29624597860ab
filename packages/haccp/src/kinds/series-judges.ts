import type { CriticalLimit, WholeLimit } from '../limits/limit';
import { degreeHoursJudge } from './degree-hours/degree-hours-judge';
import { freezingJudge } from './freezing/freezing-judge';
import type { SeriesJudge } from './judge';
import type { LimitOf } from './kind';
import { weightLossJudge } from './weight-loss/weight-loss-judge';

const judges = {
  degreeHours: degreeHoursJudge,
  weightLoss: weightLossJudge,
  freezing: freezingJudge,
} satisfies { [K in WholeLimit['kind']]: SeriesJudge<LimitOf<K>> };

export const seriesJudgeOf = ({ kind }: WholeLimit): SeriesJudge<WholeLimit> => judges[kind] as unknown as SeriesJudge<WholeLimit>;

export const isWholeLimit = (limit: CriticalLimit): limit is WholeLimit => limit.kind in judges;
