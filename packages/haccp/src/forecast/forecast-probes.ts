import { byProbe, type CurveReading } from '../thermal/curve';
import { addToCourse, beginCourse, changeMedium, type ForecastTask } from './course';
import type { Forecast } from './forecast';
import { forecastOf } from './forecast-of';
import type { MediumFrom } from './media';

/** Of several probes the last to arrive governs. */
export function forecast(readings: readonly CurveReading[], task: ForecastTask, by?: number): Forecast {
  const forecasts = [...byProbe(readings)].map(([probe, own]) => named(forecastProbe(own, task, by, []), probe));
  return forecasts.reduce((worst, one) => (isWorse(one, worst) ? one : worst));
}

/** Readings in any order. @param media as read, instead of the task's; the first also stands for the time before it */
export function forecastProbe(
  readings: readonly CurveReading[],
  task: ForecastTask,
  by: number | undefined,
  media: readonly MediumFrom[],
): Forecast {
  const [first, ...changes] = media;
  const course = beginCourse(first ? { ...task, medium: first.medium } : task);
  const changeUntil = (at: number) => {
    while (changes[0] && changes[0].from <= at) {
      const { medium, from } = changes.shift() as MediumFrom;
      changeMedium(course, medium, from);
    }
  };
  const inOrder = readings.filter((reading) => Number.isFinite(reading?.at)).sort((a, b) => a.at - b.at);
  for (const reading of inOrder) {
    changeUntil(reading.at);
    addToCourse(course, reading);
  }
  changeUntil(Infinity);
  return forecastOf(course, by);
}

export const named = <Of extends Forecast>(said: Of, probe: string): Of => (probe ? { ...said, probe } : said);

const WORST_FIRST: Forecast['state'][] = ['will miss', 'undetermined', 'at risk', 'too early to tell', 'expected', 'on course', 'reached'];

function isWorse(one: Forecast, other: Forecast): boolean {
  const rank = WORST_FIRST.indexOf(one.state) - WORST_FIRST.indexOf(other.state);
  return rank < 0 || (rank === 0 && bestOf(one) > bestOf(other));
}

/** Epoch ms; past every date where never. */
export const bestOf = (one: Forecast): number => ('arrival' in one ? (one.arrival.best ?? Number.MAX_SAFE_INTEGER) : 0);
