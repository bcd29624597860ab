import { sayFromTo } from '../../quantity/say-from-to';
import { sayPrinted } from '../../quantity/bound';
import { sayDegrees } from '../../quantity/degrees';
import { sayAbout, sayDuration } from '../../quantity/duration';
import type { Degrees, PrintedTemperature, TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { Passing } from './passing';
import type { StageSpan } from './stage-span';
import type { WorkedStep as Step } from '../../explain/explanation';
import type { SayTime } from '../../explain/explanation';
import { readingAtInstant } from '../../explain/readings-at';

type Between = { colder: readonly CurveReading[]; warmer: readonly CurveReading[]; chiller?: Degrees };

/** Where between two readings a stage began and ended, by straight lines and towards the chiller: for information. */
export function betweenSteps(
  { from, to, straight }: StageSpan,
  { start, end }: NonNullable<StageSpan['passings']>,
  { colder, warmer, chiller }: Between,
  unit: TemperatureUnit,
  say: SayTime,
): Step[] {
  const steps = [
    ...(start && from ? passed(start, { readings: colder, bound: from, chiller }, unit, say) : []),
    ...(end ? passed(end, { readings: warmer, bound: to, chiller }, unit, say) : []),
  ];
  if (straight?.endAt === undefined || steps.length === 0) return steps;
  const took = {
    what: `${sayFromTo(from, to, unit)} by straight lines, for information`,
    rule: 'end − start where the lines cross',
    putIn: `${say(straight.endAt)} − ${say(straight.startAt)}`,
    gives: sayAbout(straight.endAt - straight.startAt),
  };
  return [...steps, took];
}

function passed(
  { after, by, straight, chilled }: Passing,
  { readings, bound, chiller }: { readings: readonly CurveReading[]; bound: PrintedTemperature; chiller?: Degrees },
  unit: TemperatureUnit,
  say: SayTime,
): Step[] {
  const [before, next] = [readingAtInstant(readings, after), readingAtInstant(readings, by)];
  if (!before || !next || straight <= after || straight >= by) return [];
  const [figure, t1, t2] = [sayPrinted(bound, unit), sayDegrees(before.temperature), sayDegrees(next.temperature)];
  const line: Step = {
    what: `Through ${figure}, between ${say(after)} and ${say(by)}`,
    rule: 't₁ + (bound − T₁)(t₂ − t₁) ÷ (T₂ − T₁)',
    putIn: `${say(after)} + (${figure} − ${t1}) × ${sayDuration(by - after)} ÷ (${t2} − ${t1})`,
    gives: `about ${say(straight)}, a straight line`,
  };
  if (chilled === undefined || !chiller) return [line];
  const towards: Step = {
    what: `Through ${figure}, towards the chiller`,
    rule: 't₁ + (t₂ − t₁) ln((T₁ − Tₐ) ÷ (bound − Tₐ)) ÷ ln((T₁ − Tₐ) ÷ (T₂ − Tₐ))',
    putIn: `T₁ ${t1} at ${say(after)}, T₂ ${t2} at ${say(by)}, Tₐ ${sayDegrees(chiller)}`,
    gives: `about ${say(chilled)}, as a core cools`,
  };
  return [line, towards];
}
