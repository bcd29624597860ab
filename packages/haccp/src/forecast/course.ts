import { DEGREE } from '../lethality/celsius';
import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees, PrintedTemperature } from '../quantity/temperature';
import { isPossible, isUsableReading, type CurveReading } from '../thermal/curve';
import type { LawPoint } from './fit-law';
import { isStraying } from './straying';

/** What the product lies in: chiller air, water, the smokehouse. */
export type Medium = {
  temperature: Degrees;
  is: 'measured' | 'set point' | 'unknown';
  /** Read since it last changed, °C. */
  between?: readonly [coldest: number, warmest: number];
};

/** Without a medium the readings give it, where they can. */
export type ForecastTask = { way: 'cooling' | 'heating'; target: PrintedTemperature; medium?: Medium };

export type CoursePoint = { at: number; celsius: number };

/** Keeps at most ninety minutes of readings a minute apart: constant in size. */
export type Course = {
  readonly task: ForecastTask;
  medium: Medium;
  /** Since the fit began, °C. */
  farthest: number;
  points: CoursePoint[];
  latest?: CurveReading;
  /** Where the fit began again: the readings left the law, or the medium changed (epoch ms). */
  restartedAt?: number;
};

const WINDOW = 90 * 60_000;
/** Closer readings add nothing to a law whose time constant is hours. Common practice, no source. */
const APART = 60_000;
/** Until a tenth of the way the centre lags behind the law, and the arrival comes out hours too late. */
const LAG = 0.9;

/** Middle of possible chillers; used for the first tenth of the way, never for an arrival. */
const SOME_CHILLER: Medium = { temperature: { hundredths: 500, unit: '°C' }, is: 'unknown' };

export const beginCourse = (task: ForecastTask): Course => ({
  task,
  medium: task.medium ?? SOME_CHILLER,
  farthest: -Infinity,
  points: [],
});

/** Unusable readings, and those not later than the last, change nothing. */
export function addToCourse(course: Course, reading: CurveReading): void {
  if (!isUsableReading(reading) || !(reading.at > (course.latest?.at ?? -Infinity))) return;
  course.latest = reading;
  const point = { at: reading.at, celsius: celsiusOf(reading.temperature) };
  if (!takePoint(course, point) || !isStraying(lawPoints(course, course.points))) return;
  const lastThree = course.points.slice(-3);
  restart(course, lastThree[0]?.at);
  for (const own of lastThree) takePoint(course, own);
}

/** A shower ends, a door opens, a load comes in: earlier readings tell nothing of what follows. */
export function changeMedium(course: Course, medium: Medium, at: number): void {
  course.medium = medium;
  restart(course, at);
}

function restart(course: Course, at: number | undefined): void {
  course.farthest = -Infinity;
  course.points = [];
  course.restartedAt = at;
}

/** True for one more point; the newest of a minute stands until a newer one comes. */
function takePoint(course: Course, point: CoursePoint): boolean {
  const { points } = course;
  const gap = gapOf(course, point);
  if (gap >= course.farthest) {
    course.farthest = gap;
    course.points = [];
    return false;
  }
  if (gap >= LAG * course.farthest) return false;
  const [before, last] = points.slice(-2);
  const isWithinTheMinute = before !== undefined && last !== undefined && last.at - before.at < APART;
  if (isWithinTheMinute) points.pop();
  points.push(point);
  while ((points[0] as CoursePoint).at < point.at - WINDOW) points.shift();
  return !isWithinTheMinute;
}

/** Positive until the medium is reached. */
export const gapOf = ({ task, medium }: Pick<Course, 'task' | 'medium'>, { celsius }: { celsius: number }): number =>
  (task.way === 'cooling' ? 1 : -1) * (celsius - celsiusOf(medium.temperature));

/** In hours from the first point. */
export const lawPoints = (course: Pick<Course, 'task' | 'medium'>, points: readonly CoursePoint[]): LawPoint[] =>
  points.map((point, _, [first = point]) => ({ hours: (point.at - first.at) / 3_600_000, gap: gapOf(course, point) }));

export const celsiusOf = (temperature: Degrees): number => onCommonScale(temperature) / DEGREE;

export function taskFault({ task, medium }: Course): 'medium-unusable' | 'target-no-temperature' | undefined {
  if (!isPossible(medium.temperature)) return 'medium-unusable';
  const printed = (['°C', '°F'] as const).filter((unit) => task.target[unit] !== undefined);
  const isUsable = printed.every((unit) => isPossible({ hundredths: task.target[unit] as number, unit }));
  return printed.length > 0 && isUsable ? undefined : 'target-no-temperature';
}
