import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { CoolingLimit } from './cooling-limit';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { addToCooling, beginCooling, type CoolingSoFar } from './cooling-so-far';
import type { StageSpan } from './stage-span';
import { spansOf } from './stage-spans';
import { instantOf } from '../../thermal/time-in-band';

export type Cooled = {
  colder: readonly CurveReading[];
  warmer: readonly CurveReading[];
  cooling: CoolingSoFar;
  spans: StageSpan[];
};

/** Undefined without a usable reading, or where the error is no figure. */
export function coolingOf(own: readonly CurveReading[], limit: CoolingLimit, context: CurveContext): Cooled | undefined {
  const error = errorOf(context);
  const curve = prepareCurve(own);
  if (error === undefined || curve.colder.length === 0) return undefined;
  const cooling = beginCooling(limit, { startAt: context.startAt, error });
  curve.colder.forEach((_, index) => addToCooling(cooling, instantOf(curve, index)));
  return { ...curve, cooling, spans: spansOf(cooling, context) };
}
