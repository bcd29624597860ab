import type { CurveJudge } from '../judge';
import type { CoolingLimit } from './cooling-limit';
import { coolingOf } from './cooling-of';
import { addToCooling, beginCooling, copyOfCooling, type CoolingSoFar } from './cooling-so-far';
import { judgeCoolingSoFar } from './judge-cooling';
import { AWAITED } from './stage-span';

export const coolingJudge: CurveJudge<CoolingLimit, CoolingSoFar> = {
  begin: (limit, { startAt, error }) => beginCooling(limit, { startAt, error }),
  add: addToCooling,
  judge: judgeCoolingSoFar,
  copy: copyOfCooling,
  awaited(limit, { readings, context }) {
    const stage = coolingOf(readings, limit, context)?.spans.find(({ finding, endAt }) => endAt === undefined && AWAITED.includes(finding));
    return stage && { target: stage.to, way: 'cooling', by: stage.deadline };
  },
};
