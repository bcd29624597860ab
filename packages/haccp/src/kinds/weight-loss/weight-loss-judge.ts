import type { CurveContext } from '../../limits/curve-context';
import type { WeightReading } from '../../limits/series';
import type { Verdict } from '../../limits/verdict';
import { worstByName } from '../../limits/worst-by-name';
import { byProbe } from '../../thermal/curve';
import type { SeriesJudge } from '../judge';
import { forecastDrying } from './forecast-drying';
import { judgeWeightLoss } from './judge-weight-loss';
import type { WeightLossLimit } from './weight-loss-limit';

export const weightLossJudge: SeriesJudge<WeightLossLimit> = {
  readFrom: ({ weights }) => [weights],
  judge: ({ weights }, limit, context) => judgePieces(weights, limit, context),
};

/** Every marked piece by itself: the one that has lost least governs. */
function judgePieces(weights: readonly WeightReading[], limit: WeightLossLimit, context: CurveContext): Verdict {
  const { ended, scaleError } = context;
  return worstByName(
    [...byProbe(weights)].map(([probe, own]) => {
      const verdict = judgeWeightLoss(own, limit, ended, scaleError);
      const isDrying = verdict.kind === 'undetermined' && !ended && own.length > 0;
      return [probe, isDrying ? { ...verdict, notes: [...verdict.notes, ...sayArrival(own, limit)] } : verdict];
    }),
  );
}

/** The day the loss will be there, counted from the last weighing. */
function sayArrival(own: readonly WeightReading[], { percent }: WeightLossLimit): string[] {
  const { state, because, next } = forecastDrying(own, percent);
  if (state === 'too early to tell') return [`When it will be there: too early to tell. ${because} ${next}`];
  return state === 'undetermined' ? [] : [`By the weighings, from the last one on: ${because} Advice, never acceptance.`];
}
