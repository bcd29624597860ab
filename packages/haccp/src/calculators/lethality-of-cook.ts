import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { rowIn } from '../kinds/dwell/row-in';
import { judgeCook } from '../lethality/judge-cook';
import type { Lethality } from '../lethality/lethality';
import { lethalityAtFloors } from '../lethality/lethality-at-floors';
import { lethalityFound } from '../lethality/lethality-found';
import { nameOfSet } from '../lethality/name-of-set';
import { lethalitySets } from '../lethality/sets';
import { coded, wordFor } from '../limits/coded';
import type { CurveContext } from '../limits/curve-context';
import type { TemperatureUnit } from '../quantity/temperature';
import type { Calculation, Result, Step } from './calculation';
import { cannot, type CannotCalculate } from './cannot';
import { cautions } from './cautions';
import { judgedStep } from '../explain/explain-by-verdict';
import { curveOf, factsOf, type TypedReading } from './typed-reading';
import { asGiven } from '../quantity/quantities';

const ended: CurveContext = { ended: true };
const references = lethalitySets.filter(({ use }) => use === 'reference');

/** The printed table judges, never the lethality of the curve. */
export function lethalityOfCook(
  readings: readonly TypedReading[],
  unit: TemperatureUnit,
  limit: DwellLimit,
  title: string,
): Calculation | CannotCalculate {
  if (readings.length < 2) return cannot('two-readings-at-least');
  const curve = curveOf(readings, unit);
  const cook = judgeCook(curve, limit, ended);
  const figures = references.flatMap((set) => lethalityAtFloors(curve, set));
  const rows = cook.by === 'nothing yet' ? cook.support.rowsInAll : [];
  return {
    given: [{ what: coded('published-limit'), is: title }, { what: coded('table'), is: { limit, unit } }, ...factsOf(readings, unit)],
    steps: [{ ...judgedStep, what: coded('by-printed-table') }, ...figures.map(stepOf)],
    results: [{ what: coded('judged-by'), is: wordFor('judged-by', cook.by) }, ...figures.map(resultOf)],
    judged: [{ verdict: cook.verdict, limit }],
    notes: [...rows.map((row) => coded('time-in-all', { row: rowIn(row, unit) })), coded('logs-are-support'), coded('d-and-z-vary')],
    sources: [limit.source, ...figures.map(({ set }) => set.source)],
    grounds: [],
    cautions: [cautions.model, cautions.limits],
  };
}

const nameOf = ({ set, floorCelsius }: Lethality) => coded('set-from', { set: nameOfSet(set), floor: asGiven(floorCelsius, '°C') });

const stepOf = (figure: Lethality): Step => {
  const { minutesPerLog, referenceCelsius, zCelsius } = figure.set;
  return {
    what: nameOf(figure),
    rule: coded('lethality.rule'),
    putIn: coded('lethality.figures', {
      d: asGiven(Number(minutesPerLog.toFixed(3)), 'min'),
      reference: asGiven(referenceCelsius, '°C'),
      z: asGiven(zCelsius, '°C'),
      count: figure.restsOn.readings,
    }),
    gives: lethalityFound(figure),
  };
};

const resultOf = (figure: Lethality): Result => ({
  what: nameOf(figure),
  is: lethalityFound(figure),
  value: figure.byStraightLines,
  unit: 'log10',
});
