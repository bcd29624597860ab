import type { CurveJudge } from '../judge';
import { judgeLethalitySoFar } from './judge-lethality';
import type { LethalityLimit } from './lethality-limit';
import { addToLethalityLimit, beginLethalityLimit, copyOfLethality, type LethalitySoFar } from './lethality-so-far';

export const lethalityJudge: CurveJudge<LethalityLimit, LethalitySoFar> = {
  begin: (limit, { error }) => beginLethalityLimit(limit, error),
  add: addToLethalityLimit,
  judge: judgeLethalitySoFar,
  copy: copyOfLethality,
  awaited: () => undefined,
};
