import { degreeHoursFahrenheit as limit } from '../kinds/degree-hours/fermentation-limit';
import { judgeFermentation } from '../kinds/degree-hours/judge-fermentation';
import type { Tell } from '../limits/told';
import { plain } from '../limits/measurement';
import { degrees, sayDegrees } from '../quantity/degrees';
import { sayDuration } from '../quantity/duration';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import { curveOf, type TypedReading } from './typed-reading';
import type { CannotCalculate, Calculation } from './calculation';

const MINUTE = 60_000;

/** Chamber temperature and pH at the same moments, from the beginning of fermentation. */
export type FermentationReading = TypedReading & { pH: number };

/**
 * Degree-hours of a fermentation until the pH is down, by the class of the hottest the chamber was. The figures printed
 * in °F are the confirmed ones and are used for readings in either unit.
 */
export function fermentationByDegreeHours(
  readings: readonly FermentationReading[],
  unit: TemperatureUnit,
  tell: Tell,
): Calculation | CannotCalculate {
  if (readings.length === 0) return { cannot: 'There is no reading: give at least one.' };
  const acid = readings.map(({ minutes, pH }) => ({ at: Math.round(minutes * MINUTE), pH: plain(pH) }));
  const told = tell(judgeFermentation({ chamber: curveOf(readings, unit), acid, startAt: 0, ended: true }, limit));
  return {
    title: 'Fermentation by degree-hours',
    given: readings.map(({ minutes, value, pH }) => ({
      what: minutes === 0 ? 'At the start' : `After ${sayDuration(minutes * MINUTE)}`,
      said: `${sayDegrees(degrees(value, unit))}, pH ${pH}`,
    })),
    steps: [
      {
        what: 'Degree-hours',
        rule: `sum of (chamber − ${sayDegrees(limit.base)}) × hours until pH ${limit.pH.thousandths / 1000}`,
        putIn: told.measured,
        gives: told.because,
      },
    ],
    results: [
      { what: 'Measured', said: told.measured },
      { what: 'Limit', said: told.limit },
    ],
    verdicts: [told],
    notes: told.notes,
    sources: [limit.source],
    cautions: [cautions.limits],
  };
}
