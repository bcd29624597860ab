import { DEGREE } from '../lethality/celsius';
import { coded } from '../limits/coded';
import { above, boundOf } from '../quantity/bound';
import { printedIn } from '../quantity/quantities';
import { arrivalAt } from './arrival';
import { lawPoints, taskFault, type Course, type CoursePoint } from './course';
import { findMedium } from './find-medium';
import { LEAST_SPAN_HOURS } from './fit-law';
import { ADVICE, type Forecast } from './forecast';
import { toldOfExpected, type Expected, type ExpectedState } from './expected';

const HOUR = 3_600_000;

/**
 * On course: the latest of the range is in time; will miss: the earliest is not; at risk: the range lies on both sides;
 * expected: no deadline. Good to 5 % of a first cooling stage after 30 to 60 min of falling readings, to 15 to 25 % of
 * a second one unless the chiller is logged. Of heating nothing is published; skin drying and evaporation slow it down.
 * @param by the deadline (epoch ms)
 */
export function forecastOf(course: Course, by?: number): Forecast {
  const fault = taskFault(course);
  if (fault) return { use: ADVICE, state: 'undetermined', because: [coded(fault)], next: [coded('enter-it-again')] };
  const { latest, task, points } = course;
  if (!latest) return { use: ADVICE, state: 'undetermined', because: [coded('nothing-usable-read')], next: [READ] };

  const bound = boundOf(task.target);
  const side = task.way === 'cooling' ? 1 : -1;
  const target = printedIn(task.target, latest.temperature.unit);
  if (side * above(latest.temperature, bound) <= 0) {
    return { use: ADVICE, state: 'reached', because: [coded('target-was-reached', { target })], next: [] };
  }
  const found = findMedium(course);
  if (!found) return isThin(course) && task.way === 'cooling' ? tooEarly(course) : MEDIUM_UNKNOWN;
  const { known: medium, between } = found;
  const gap = side * (bound[latest.temperature.unit] / DEGREE - medium.celsius);
  const errors = between.map((celsius) => side * (medium.celsius - celsius));
  const near = medium.from === 'worked out from the readings' ? withMedium(course, medium.celsius) : course;
  const arrival = arrivalAt(lawPoints(near, points), gap, errors);
  if (!arrival) return tooEarly(course);

  const from = (points[0] as CoursePoint).at;
  const instant = (hours: number) => Math.max(latest.at, Math.round(from + hours * HOUR));
  return {
    use: ADVICE,
    ...judge({
      best: instant(arrival.best),
      earliest: instant(arrival.earliest),
      latest: instant(arrival.latest),
      lastAt: latest.at,
      by: Number.isFinite(by) ? by : undefined,
      target,
      way: task.way,
    }),
    medium,
    restartedAt: course.restartedAt,
  };
}

function judge(expected: Expected) {
  const { best, earliest, latest, lastAt, by } = expected;
  const left = (by ?? best) - lastAt;
  const takeMoreReadings = !(latest - earliest <= left / 3);
  const arrival = { best: finite(best), earliest: finite(earliest), latest: finite(latest) };
  const state = stateOf(expected);
  return { state, arrival, takeMoreReadings, ...toldOfExpected(expected, state, takeMoreReadings) };
}

function stateOf({ earliest, latest, lastAt, by }: Expected): ExpectedState {
  if (earliest === Infinity) return 'will miss';
  if (by === undefined) return 'expected';
  if (latest <= by) return 'on course';
  return earliest > by || lastAt >= by ? 'will miss' : 'at risk';
}

export const MEDIUM_UNKNOWN: Forecast = {
  use: ADVICE,
  state: 'undetermined',
  because: [coded('medium-unknown')],
  next: [coded('read-the-medium')],
};

function isThin({ points }: Course): boolean {
  const span = (points[points.length - 1]?.at ?? 0) - (points[0]?.at ?? 0);
  return points.length < 3 || span < LEAST_SPAN_HOURS * HOUR;
}

function tooEarly(course: Course): Forecast {
  const { points, task, restartedAt } = course;
  const word = task.way === 'cooling' ? 'falling' : 'rising';
  const because = isThin(course) ? coded(`few-${word}-readings`, { count: points.length }) : coded(`not-${word}-to-medium`);
  const changed = restartedAt === undefined ? [] : [coded('medium-changed')];
  return { use: ADVICE, state: 'too early to tell', because: [because, ...changed], next: [READ] };
}

const withMedium = (course: Course, celsius: number): Pick<Course, 'task' | 'medium'> => ({
  task: course.task,
  medium: { temperature: { hundredths: celsius * 100, unit: '°C' }, is: 'measured' },
});

const READ = coded('read-core-and-medium');

const finite = (instant: number): number | undefined => (Number.isFinite(instant) ? instant : undefined);
