import { explainerOf } from '../kinds/explainers';
import type { CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import type { StageDrawn } from './drawing';
import { governing } from './governing';

/** Of the governing probe; none without a usable reading. */
export function stretchesOf(limit: CriticalLimit, verdict: Verdict, curve: readonly CurveReading[], context: CurveContext): StageDrawn[] {
  const readings = prepareCurve(governing(curve, verdict)).colder;
  const unit = readings.at(-1)?.temperature.unit;
  return unit ? explainerOf(limit).stretches(limit, { verdict, readings, unit, context }) : [];
}
