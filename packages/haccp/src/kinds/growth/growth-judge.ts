import type { CurveJudge } from '../judge';
import type { GrowthLimit } from './growth-limit';
import { addToGrowthLimit, beginGrowthLimit, copyOfGrowth, type GrowthSoFar } from './growth-so-far';
import { judgeGrowthSoFar } from './judge-growth';

export const growthJudge: CurveJudge<GrowthLimit, GrowthSoFar> = {
  begin: (limit, { error, startAt }) => beginGrowthLimit(limit, error, startAt),
  add: addToGrowthLimit,
  judge: judgeGrowthSoFar,
  copy: copyOfGrowth,
  awaited: () => undefined,
};
