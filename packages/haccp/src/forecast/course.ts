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
  /** The coldest and the warmest that was read of it since it last changed, °C. */
  between?: readonly [coldest: number, warmest: number];
};

/** Without a medium it is worked out from the readings, where they tell. */
export type ForecastTask = { way: 'cooling' | 'heating'; target: PrintedTemperature; medium?: Medium };

export type CoursePoint = { at: number; celsius: number };

/**
 * A core on its way to a target, up to the last reading added. It keeps at most ninety minutes of readings a minute
 * apart, so that each further reading costs the same however long the way.
 */
export type Course = {
  readonly task: ForecastTask;
  medium: Medium;
  /** The farthest the core was from its medium since the fit began, °C. */
  farthest: number;
  /** What the law is fitted to. */
  points: CoursePoint[];
  latest?: CurveReading;
  /** The fit began again here, because the readings left the law or the medium was changed (epoch ms). */
  restartedAt?: number;
};

const WINDOW = 90 * 60_000;
/** Closer readings say nothing new of a law whose time constant is hours. Common practice, no source. */
const APART = 60_000;
/** Until a tenth of the way is done the centre lags behind the law: such readings put the arrival hours too late. */
const LAG = 0.9;

/** The middle of what a chiller may be; it only tells the first tenth of the way, never an arrival. */
const SOME_CHILLER: Medium = { temperature: { hundredths: 500, unit: '°C' }, is: 'unknown' };

export const beginCourse = (task: ForecastTask): Course => ({
  task,
  medium: task.medium ?? SOME_CHILLER,
  farthest: -Infinity,
  points: [],
});

/** Adds one reading. What cannot be true, and what is not later than the last one, changes nothing. */
export function addToCourse(course: Course, reading: CurveReading): void {
  if (!isUsableReading(reading) || !(reading.at > (course.latest?.at ?? -Infinity))) return;
  course.latest = reading;
  const point = { at: reading.at, celsius: celsiusOf(reading.temperature) };
  if (!takePoint(course, point) || !isStraying(lawPoints(course, course.points))) return;
  const lastThree = course.points.slice(-3);
  restart(course, lastThree[0]?.at);
  for (const own of lastThree) takePoint(course, own);
}

/** The shower is over, the door stood open, a load came in: what was read before says nothing of what follows. */
export function changeMedium(course: Course, medium: Medium, at: number): void {
  course.medium = medium;
  restart(course, at);
}

function restart(course: Course, at: number | undefined): void {
  course.farthest = -Infinity;
  course.points = [];
  course.restartedAt = at;
}

/** True when there is one more point for the law; the newest of a minute stands until a newer one comes. */
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

/** How far a point is from the medium, on the way it is meant to go. */
export const gapOf = ({ task, medium }: Pick<Course, 'task' | 'medium'>, { celsius }: { celsius: number }): number =>
  (task.way === 'cooling' ? 1 : -1) * (celsius - celsiusOf(medium.temperature));

/** Points for the law, in hours from the first of them. */
export const lawPoints = (course: Pick<Course, 'task' | 'medium'>, points: readonly CoursePoint[]): LawPoint[] =>
  points.map((point, _, [first = point]) => ({ hours: (point.at - first.at) / 3_600_000, gap: gapOf(course, point) }));

export const celsiusOf = (temperature: Degrees): number => onCommonScale(temperature) / DEGREE;

/** The code of why no forecast can be made of it; undefined when it is sound. */
export function taskFault({ task, medium }: Course): 'medium-unusable' | 'target-no-temperature' | undefined {
  if (!isPossible(medium.temperature)) return 'medium-unusable';
  const printed = (['°C', '°F'] as const).filter((unit) => task.target[unit] !== undefined);
  const isUsable = printed.every((unit) => isPossible({ hundredths: task.target[unit] as number, unit }));
  return printed.length > 0 && isUsable ? undefined : 'target-no-temperature';
}
