import { byProbe, type CurveReading } from '../thermal/curve';
import { addToCourse, beginCourse, type ForecastTask } from './course';
import type { Forecast } from './forecast';
import { forecastOf } from './forecast-of';

/** Readings as a whole, of one or several probes: the one that will be last governs. */
export function forecast(readings: readonly CurveReading[], task: ForecastTask, by?: number): Forecast {
  const forecasts = [...byProbe(readings)].map(([probe, own]): Forecast => {
    const course = beginCourse(task);
    const inOrder = own.filter((reading) => Number.isFinite(reading?.at)).sort((a, b) => a.at - b.at);
    for (const reading of inOrder) addToCourse(course, reading);
    return probe ? { ...forecastOf(course, by), probe } : forecastOf(course, by);
  });
  return forecasts.reduce((worst, one) => (isWorse(one, worst) ? one : worst));
}

const WORST_FIRST: Forecast['state'][] = [
  'will miss', 'undetermined', 'at risk', 'too early to tell', 'expected', 'on course', 'reached',
];

function isWorse(one: Forecast, other: Forecast): boolean {
  const rank = WORST_FIRST.indexOf(one.state) - WORST_FIRST.indexOf(other.state);
  return rank < 0 || (rank === 0 && bestOf(one) > bestOf(other));
}

const bestOf = (one: Forecast): number => ('arrival' in one ? (one.arrival.best ?? Infinity) : 0);
