import { addToCourse, beginCourse } from '../forecast/course';
import { forecastOf } from '../forecast/forecast-of';
import { scaled } from '../quantity/decimal';
import { degrees, sayDegrees } from '../quantity/degrees';
import { sayAbout } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import { commonPractice, type CannotCalculate, type Result, type Calculation } from './calculation';

export type ArrivalAtTarget = {
  readings: readonly TypedReading[];
  unit: TemperatureUnit;
  way: 'cooling' | 'heating';
  target: number;
  /** What the product lies in: the air of the chiller, the water, the smokehouse. */
  medium: number;
  /** Minutes from the first reading by which the target has to be reached. */
  withinMinutes?: number;
};

/** When a core will be at its target, by the law of its last readings. Advice to act in time, never acceptance. */
export function arrivalAtTarget(asked: ArrivalAtTarget): Calculation | CannotCalculate {
  const { readings, unit, way, target, medium, withinMinutes } = asked;
  const hundredths = scaled(target, 2);
  if (hundredths === undefined) return { cannot: `${target} ${unit} is not a target with at most two decimals.` };
  const course = beginCourse({
    way,
    target: { [unit]: hundredths },
    medium: { temperature: degrees(medium, unit), is: 'measured' },
  });
  for (const reading of curveOf(readings, unit)) addToCourse(course, reading);
  const forecast = forecastOf(course, withinMinutes === undefined ? undefined : withinMinutes * 60_000);
  if (forecast.state === 'undetermined') return { cannot: [forecast.because, forecast.next].join(' ').trim() };
  const arrival = 'arrival' in forecast ? forecast.arrival : {};
  const at = (what: string, instant: number | undefined): Result[] =>
    'arrival' in forecast
      ? [{ what, said: instant === undefined ? 'never, as it goes now' : `${sayAbout(instant)} after the first reading` }]
      : [];
  return {
    title: 'When will it be there?',
    given: [
      { what: 'Target', said: sayDegrees(degrees(target, unit)) },
      { what: 'It lies in', said: sayDegrees(degrees(medium, unit)) },
      ...factsOf(readings, unit),
    ],
    steps: [
      {
        what: 'The law of the last readings',
        rule: 'T = medium + j (T₀ − medium) e^(−t ÷ τ), fitted to ln(T − medium)',
        putIn: `${course.points.length} readings of the last 90 min, medium ± 2 °C, last reading ± 0.3 °C`,
        gives: forecast.because,
      },
    ],
    results: [
      { what: 'State', said: forecast.state },
      ...at('Most likely', arrival.best),
      ...at('At the earliest', arrival.earliest),
      ...at('At the latest', arrival.latest),
    ],
    verdicts: [],
    notes: [
      ...(forecast.next ? [forecast.next] : []),
      'Good to 5 % of a first cooling stage after 30 to 60 min of falling readings; to 15 to 25 % of a second one.',
      'It helps to act in time. No lot is accepted on it and no reading is replaced by it.',
    ],
    sources: [
      {
        citation: 'Carslaw and Jaeger, Conduction of Heat in Solids, first term of the series; f and j of Ball 1923',
        edition: '2nd edition, 1959',
        confirmed: false,
      },
      commonPractice('Window of 90 min and the errors allowed for'),
    ],
    cautions: [cautions.model],
  };
}
