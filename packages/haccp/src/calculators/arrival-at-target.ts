import { addToCourse, beginCourse } from '../forecast/course';
import { forecastOf } from '../forecast/forecast-of';
import { coded, wordFor } from '../limits/coded';
import { allOf } from '../limits/line-part';
import { scaled } from '../quantity/decimal';
import { degrees } from '../quantity/degrees';
import { asGiven, aboutTime, degreesOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation, Result } from './calculation';
import { cannot, type CannotCalculate, type Why } from './cannot';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';

export type ArrivalAtTarget = {
  readings: readonly TypedReading[];
  unit: TemperatureUnit;
  way: 'cooling' | 'heating';
  target: number;
  /** Chiller air, water, the smokehouse. */
  medium: number;
  /** From the first reading to the deadline. */
  withinMinutes?: number;
};

/** By the law of the last readings. Advice to act in time, never acceptance. */
export function arrivalAtTarget(asked: ArrivalAtTarget): Calculation | CannotCalculate {
  const { readings, unit, way, target, medium, withinMinutes } = asked;
  const hundredths = scaled(target, 2);
  if (hundredths === undefined) return cannot('target-unusable', { target: asGiven(target, unit) });
  const course = beginCourse({
    way,
    target: { [unit]: hundredths },
    medium: { temperature: degrees(medium, unit), is: 'measured' },
  });
  for (const reading of curveOf(readings, unit)) addToCourse(course, reading);
  const forecast = forecastOf(course, withinMinutes === undefined ? undefined : withinMinutes * 60_000);
  if (forecast.state === 'undetermined') return { cannot: [...forecast.because, ...forecast.next] as Why[] };
  const arrival = 'arrival' in forecast ? forecast.arrival : {};
  const at = (what: string, instant: number | undefined): Result[] =>
    'arrival' in forecast
      ? [
          {
            what: coded(what),
            is: instant === undefined ? coded('never-as-it-goes') : coded('after-first-reading', { time: aboutTime(instant) }),
          },
        ]
      : [];
  return {
    given: [
      { what: coded('target'), is: degreesOf(degrees(target, unit)) },
      { what: coded('lies-in'), is: degreesOf(degrees(medium, unit)) },
      ...factsOf(readings, unit),
    ],
    steps: [
      {
        what: coded('law-of-readings'),
        rule: coded('law-of-readings.rule'),
        putIn: coded('law-of-readings.figures', { count: course.points.length }),
        gives: allOf(forecast.because),
      },
    ],
    results: [
      { what: coded('state'), is: wordFor('state', forecast.state) },
      ...at('most-likely', arrival.best),
      ...at('at-the-earliest', arrival.earliest),
      ...at('at-the-latest', arrival.latest),
    ],
    judged: [],
    notes: [...forecast.next, coded('forecast-good-to'), coded('forecast-helps')],
    sources: [
      {
        citation: 'Carslaw and Jaeger, Conduction of Heat in Solids, first term of the series; f and j of Ball 1923',
        edition: '2nd edition, 1959',
        confirmed: false,
      },
    ],
    grounds: [coded('practice-window')],
    cautions: [cautions.model],
  };
}
