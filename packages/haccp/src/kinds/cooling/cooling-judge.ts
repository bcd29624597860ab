import { errorOf } from '../../limits/curve-context';
import { prepareCurve } from '../../thermal/curve';
import { instantOf } from '../../thermal/time-in-band';
import type { CurveJudge } from '../judge';
import type { CoolingLimit } from './cooling-limit';
import { addToCooling, beginCooling, copyOfCooling, type CoolingSoFar } from './cooling-so-far';
import { judgeCoolingSoFar } from './judge-cooling';
import type { StageFinding } from './stage-span';
import { spansOf } from './stage-spans';

export const coolingJudge: CurveJudge<CoolingLimit, CoolingSoFar> = {
  begin: (limit, { startAt, error }) => beginCooling(limit, { startAt, error }),
  add: addToCooling,
  judge: judgeCoolingSoFar,
  copy: copyOfCooling,
  awaited(limit, { readings, context }) {
    const cooling = beginCooling(limit, { startAt: context.startAt, error: errorOf(context) });
    const curve = prepareCurve(readings);
    curve.colder.forEach((_, index) => addToCooling(cooling, instantOf(curve, index)));
    const stage = spansOf(cooling, context).find(({ finding, endAt }) => endAt === undefined && GOING_ON.includes(finding));
    return stage && { target: stage.to, way: 'cooling', by: stage.deadline };
  },
};

const GOING_ON: StageFinding[] = ['running', 'start unknown', 'end of cooking late', 'overdue', 'not begun', 'nothing since cooking'];
