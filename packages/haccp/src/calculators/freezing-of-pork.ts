import { judgeFreezing, type Freezing } from '../kinds/freezing/judge-freezing';
import type { Tell } from '../limits/told';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import type { CannotCalculate, Calculation } from './calculation';

/** Pork frozen against trichinae, by the air of the freezer and the thickness, or by the centre of the meat. */
export function freezingOfPork(
  read: Freezing['read'],
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
  tell: Tell,
): Calculation | CannotCalculate {
  if (readings.length === 0) return { cannot: 'There is no reading: give at least one.' };
  const curve = curveOf(readings, unit);
  // Who works it out gives the readings since the meat went in.
  const startAt = Math.min(...curve.map(({ at }) => at));
  const told = tell(judgeFreezing({ read, readings: curve, startAt, ended: true }));
  const what = read.what === 'centre' ? 'the centre of the meat' : `the freezer, ${read.thickness.value} ${read.thickness.unit} thick`;
  return {
    title: 'Freezing of pork against trichinae',
    given: [{ what: 'Read in', said: what }, ...factsOf(readings, unit)],
    steps: [{ what: 'Against the table', rule: told.limit, putIn: told.measured, gives: told.because }],
    results: [{ what: 'Measured', said: told.measured }],
    verdicts: [told],
    notes: told.notes,
    sources: [told.source],
    cautions: [cautions.limits],
  };
}
