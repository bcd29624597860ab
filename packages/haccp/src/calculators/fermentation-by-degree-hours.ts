import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import { judgeFermentation } from '../kinds/degree-hours/judge-fermentation';
import { coded } from '../limits/coded';
import { plain } from '../limits/measurement';
import { decimalText } from '../quantity/decimal';
import { degrees } from '../quantity/degrees';
import { asGiven, degreesOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { curveOf, momentOf, type TypedReading } from './typed-reading';

const MINUTE = 60_000;
const limit = { kind: 'degreeHours', ...degreeHoursFahrenheit } as const;

export type FermentationReading = TypedReading & { pH: number };

/** The figures printed in °F are the confirmed ones and are used for readings in either unit. */
export function fermentationByDegreeHours(readings: readonly FermentationReading[], unit: TemperatureUnit): Calculation | CannotCalculate {
  if (readings.length === 0) return cannot('no-reading-given');
  const acid = readings.map(({ minutes, pH }) => ({ at: Math.round(minutes * MINUTE), pH: plain(pH) }));
  return {
    given: readings.map(({ minutes, value, pH }) => ({
      what: momentOf(minutes),
      is: coded('chamber-and-ph', { chamber: degreesOf(degrees(value, unit)), pH: asGiven(pH, 'pH') }),
    })),
    steps: [
      {
        what: coded('degree-hours'),
        rule: coded('degree-hours.rule', {
          base: degreesOf(limit.base),
          pH: { value: decimalText(limit.pH.thousandths, 3), unit: 'pH' },
        }),
        putIn: { verdict: 'measured' },
        gives: { verdict: 'because' },
      },
    ],
    results: [
      { what: coded('measured'), is: { verdict: 'measured' } },
      { what: coded('limit'), is: { verdict: 'limit' } },
    ],
    judged: [{ verdict: judgeFermentation({ chamber: curveOf(readings, unit), acid, startAt: 0, ended: true }, limit), limit }],
    notes: [],
    sources: [limit.source],
    grounds: [],
    cautions: [cautions.limits],
  };
}
