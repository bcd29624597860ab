import type { CurveContext } from '../limits/curve-context';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { sayLimit } from '../limits/say-limit';
import { sayRow } from '../kinds/dwell/say-row';
import type { Tell } from '../limits/told';
import { judgeCook } from '../lethality/judge-cook';
import type { Lethality } from '../lethality/lethality';
import { lethalityAtFloors } from '../lethality/lethality-at-floors';
import { sayLethality } from '../lethality/say-lethality';
import { lethalitySets } from '../lethality/sets';
import type { TemperatureUnit } from '../quantity/temperature';
import { cautions } from './cautions';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import type { CannotCalculate, Result, Step, Calculation } from './calculation';

const ended: CurveContext = { ended: true };
const references = lethalitySets.filter(({ use }) => use === 'reference');

/** A cook by the printed table and, beside it and never instead of it, the lethality its curve adds up to. */
export function lethalityOfCook(
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
  limit: DwellLimit,
  title: string,
  tell: Tell,
): Calculation | CannotCalculate {
  if (readings.length < 2) return { cannot: 'A cook needs at least two readings: nothing is known outside them.' };
  const curve = curveOf(readings, unit);
  const cook = judgeCook(curve, limit, ended);
  const told = tell(cook.verdict, limit);
  const figures = references.flatMap((set) => lethalityAtFloors(curve, set));
  const rows = cook.by === 'nothing yet' ? cook.support.rowsInAll : [];
  return {
    title,
    given: [{ what: 'Table', said: sayLimit(limit, unit) }, ...factsOf(readings, unit)],
    steps: [{ what: 'By the printed table', rule: told.limit, putIn: told.measured, gives: told.because }, ...figures.map(stepOf)],
    results: [{ what: 'Judged by', said: cook.by }, ...figures.map(resultOf)],
    verdicts: [told],
    notes: [
      ...told.notes,
      ...rows.map((row) => `In all, though not without a break, there was time for ${sayRow(row, unit)}.`),
      'The figures in logs are support for a decision. They never turn a missed or undetermined table into a met one.',
      'D and z were measured in other products; a factor of two to three is normal. Read them in half logs.',
    ],
    sources: [limit.source, ...figures.map(({ set }) => set.source)],
    cautions: [cautions.model, cautions.limits],
  };
}

const nameOf = ({ set, floorCelsius }: Lethality): string => `${set.name}, from ${floorCelsius} °C`;

const stepOf = (figure: Lethality): Step => {
  const { minutesPerLog, referenceCelsius, zCelsius } = figure.set;
  return {
    what: nameOf(figure),
    rule: 'sum of time ÷ D, where D = D at the reference × 10^((reference − T) ÷ z)',
    putIn: `D ${Number(minutesPerLog.toFixed(3))} min at ${referenceCelsius} °C, z ${zCelsius} °C, straight lines between ${figure.restsOn.readings} readings`,
    gives: sayLethality(figure),
  };
};

const resultOf = (figure: Lethality): Result => ({
  what: nameOf(figure),
  said: sayLethality(figure),
  value: figure.byStraightLines,
  unit: 'log10, model estimate',
});
