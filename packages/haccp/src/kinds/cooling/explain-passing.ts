import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import { printedAllowing } from '../../quantity/printed-allowing';
import { aboutTime, degreesOf, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { Degrees, TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { Passing } from './passing';
import { stageOf } from './stage-of';
import type { StageSpan } from './stage-span';
import type { ExplainedStep } from '../../explain/explanation';
import { readingAtInstant } from '../../explain/readings-at';

type Between = { colder: readonly CurveReading[]; warmer: readonly CurveReading[]; error: number; chiller?: Degrees };

/** By straight lines and towards the chiller: for information. */
export function betweenSteps(
  { from, to, straight }: StageSpan,
  { start, end }: NonNullable<StageSpan['passings']>,
  { colder, warmer, error, chiller }: Between,
  unit: TemperatureUnit,
): ExplainedStep[] {
  const steps = [
    ...(start && from ? passed(start, { readings: colder, figure: printedAllowing(from, unit, error), chiller }) : []),
    ...(end ? passed(end, { readings: warmer, figure: printedAllowing(to, unit, -error), chiller }) : []),
  ];
  if (straight?.endAt === undefined || steps.length === 0) return steps;
  const took: ExplainedStep = {
    what: coded('stage-by-straight-lines', { stage: stageOf(from, to, unit) }),
    rule: coded('end-less-start-of-lines'),
    putIn: sum`${{ at: straight.endAt }} − ${{ at: straight.startAt }}`,
    gives: aboutTime(straight.endAt - straight.startAt),
  };
  return [...steps, took];
}

function passed(
  { after, by, straight, chilled }: Passing,
  { readings, figure, chiller }: { readings: readonly CurveReading[]; figure: Quantity; chiller?: Degrees },
): ExplainedStep[] {
  const [before, next] = [readingAtInstant(readings, after), readingAtInstant(readings, by)];
  if (!before || !next || straight <= after || straight >= by) return [];
  const [t1, t2] = [degreesOf(before.temperature), degreesOf(next.temperature)];
  const [from, to] = [{ at: after }, { at: by }];
  const line: ExplainedStep = {
    what: coded('through-between', { figure, from, to }),
    rule: coded('straight-line.rule'),
    putIn: sum`${from} + (${figure} − ${t1}) × ${timeOf(by - after)} ÷ (${t2} − ${t1})`,
    gives: coded('about-straight', { at: { at: straight } }),
  };
  if (chilled === undefined || !chiller) return [line];
  const towards: ExplainedStep = {
    what: coded('through-towards-chiller', { figure }),
    rule: coded('towards-chiller.rule'),
    putIn: coded('towards-chiller.figures', { t1, from, t2, to, chiller: degreesOf(chiller) }),
    gives: coded('about-as-cools', { at: { at: chilled } }),
  };
  return [line, towards];
}
