import { judgeCurve } from '../limits/judge-curve';
import { errorOf, type CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { boundOf } from '../quantity/bound';
import type { PrintedTemperature } from '../quantity/temperature';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { addToCooling, beginCooling } from '../kinds/cooling/cooling-so-far';
import type { StageFinding } from '../kinds/cooling/stage-span';
import { spansOf } from '../kinds/cooling/stage-spans';
import { instantOf } from '../thermal/time-in-band';

/** The bound that a running stage has still to reach, and by when (epoch ms) where there is a time. */
export type Awaited = { target: PrintedTemperature; way: 'cooling' | 'heating'; by?: number };

const GOING_ON: StageFinding[] = ['running', 'start unknown', 'end of cooking late', 'overdue', 'not begun', 'nothing since cooking'];

/**
 * What the readings of one probe still have to reach under a limit: of a chill the foot of its first stage that goes
 * on, of a come-up the top of its band, of a hold the coldest row of its table. Undefined where nothing is awaited:
 * the limit is met, or missed for good, or knows no temperature to reach.
 */
export function awaitedUnder(limit: CriticalLimit, readings: readonly CurveReading[], context: CurveContext): Awaited | undefined {
  if (limit.kind === 'cooling') {
    const cooling = beginCooling(limit, { startAt: context.startAt, error: errorOf(context) });
    const curve = prepareCurve(readings);
    curve.colder.forEach((_, index) => addToCooling(cooling, instantOf(curve, index)));
    const stage = spansOf(cooling, context).find(({ finding, endAt }) => endAt === undefined && GOING_ON.includes(finding));
    return stage && { target: stage.to, way: 'cooling', by: stage.deadline };
  }
  if (limit.kind !== 'bandTime' && limit.kind !== 'dwell') return undefined;
  const { kind, running } = judgeCurve(readings, limit, context);
  if (kind !== 'undetermined' || !running) return undefined;
  if (limit.kind === 'dwell') return { target: coldestRow(limit), way: 'heating' };
  return { target: limit.to, way: 'heating', by: running.deadline };
}

function coldestRow({ rows }: DwellLimit): PrintedTemperature {
  const [coldest] = rows.map(({ at }) => at).sort((a, b) => boundOf(a)['°C'] - boundOf(b)['°C']);
  return coldest as PrintedTemperature;
}
