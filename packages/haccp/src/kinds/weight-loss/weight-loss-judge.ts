import type { CurveContext } from '../../limits/curve-context';
import type { WeightReading } from '../../limits/series';
import type { Coded, Verdict } from '../../limits/verdict';
import { worstByName } from '../../limits/worst-by-name';
import { byProbe } from '../../thermal/curve';
import { asGiven, amountOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { SeriesJudge } from '../judge';
import { forecastDrying } from './forecast-drying';
import { judgeWeightLoss } from './judge-weight-loss';
import type { WeightLossLimit } from './weight-loss-limit';

export const weightLossJudge: SeriesJudge<WeightLossLimit> = {
  readFrom: ({ weights }) => [weights],
  judge: ({ weights }, limit, context) => judgePieces(weights, limit, context),
};

function judgePieces(weights: readonly WeightReading[], limit: WeightLossLimit, context: CurveContext): Verdict {
  const { ended, scaleError } = context;
  return worstByName(
    [...byProbe(weights)].map(([probe, own]) => {
      const verdict = judgeWeightLoss(own, limit, ended, scaleError);
      const isDrying = verdict.kind === 'undetermined' && !ended && own.length > 0;
      return [probe, isDrying ? { ...verdict, notes: [...verdict.notes, ...notedArrival(own, limit)] } : verdict];
    }),
  );
}

/** In days from the last weighing. */
function notedArrival(own: readonly WeightReading[], { percent }: WeightLossLimit): Coded[] {
  const forecast = forecastDrying(own, percent);
  if (forecast.state === 'too early to tell') return [{ code: 'loss-arrival-too-early' }];
  if (!('arrival' in forecast)) return [];
  const last = Math.max(...own.map(({ at }) => at).filter(Number.isFinite));
  const until = (at: number | undefined) => amountOf(Math.round((((at as number) - last) / DAY) * 10), 'days', 1);
  const { best, earliest, latest } = forecast.arrival;
  const asked: Quantity = asGiven(percent, '%');
  if (best === undefined) return [{ code: 'loss-may-never-be-there', figures: { asked } }];
  return [{ code: 'loss-arrival', figures: { asked, best: until(best), earliest: until(earliest), latest: until(latest) } }];
}

const DAY = 86_400_000;
