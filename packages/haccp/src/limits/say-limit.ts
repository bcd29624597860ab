import { sayWeightLoss } from '../kinds/weight-loss/judge-weight-loss';
import { sayDegreeHours } from '../kinds/degree-hours/say-fermentation';
import { sayFigureLimit } from '../kinds/figure/figure-limit';
import { sayFreezing } from '../kinds/freezing/judge-freezing';
import { sayBoth, sayPrinted } from '../quantity/bound';
import { decimalText } from '../quantity/decimal';
import { sayDuration, millisecondsOf } from '../quantity/duration';
import type { PrintedTemperature, TemperatureUnit } from '../quantity/temperature';
import { sayLethalityLimit } from '../kinds/lethality/say-lethality-limit';
import type { ConcentrationLimit } from '../kinds/concentration/concentration-limit';
import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { CriticalLimit } from './limit';
import type { DwellLimit, DwellRow } from '../kinds/dwell/dwell-limit';
import type { RangeLimit } from '../kinds/range/range-limit';

/** A critical limit in one line, as its source prints it. Curves are said in the unit of the readings. */
export function sayLimit(limit: CriticalLimit, unit: TemperatureUnit = '°F'): string {
  switch (limit.kind) {
    case 'range':
      return sayRange(limit);
    case 'concentration':
      return sayConcentration(limit);
    case 'dwell':
      return sayDwell(limit, unit);
    case 'cooling':
      return sayCooling(limit, unit);
    case 'bandTime':
      return `${sayFromTo(limit.from, limit.to, unit)} within ${sayDuration(millisecondsOf(limit.maxSeconds))} in all`;
    case 'lethality':
      return sayLethalityLimit(limit, unit);
    case 'growth':
      return `at most ${decimalText(limit.log10, 2)} log of C. perfringens while cooling, predicted for ${limit.species}`;
    case 'degreeHours':
      return sayDegreeHours(limit);
    case 'weightLoss':
      return sayWeightLoss(limit);
    case 'freezing':
      return sayFreezing(limit);
    case 'figure':
      return sayFigureLimit(limit);
    case 'attestation':
      return limit.statement;
  }
}

/** One row of a dwell table: "145 °F for 4 min", "158 °F, no holding time". */
export function sayRow({ at, seconds }: DwellRow, unit: TemperatureUnit): string {
  const figure = sayPrinted(at, unit);
  return seconds === 0 ? `${figure}, no holding time` : `${figure} for ${sayDuration(millisecondsOf(seconds))}`;
}

/** "130 → 80 °F", "end of cooking → 46.4 °F" */
export function sayFromTo(from: PrintedTemperature | undefined, to: PrintedTemperature, unit: TemperatureUnit): string {
  if (!from) return `end of cooking → ${sayPrinted(to, unit)}`;
  return `${sayPrinted(from, unit).replace(` ${unit}`, '')} → ${sayPrinted(to, unit)}`;
}

function sayRange({ min, max, measured, signs }: RangeLimit): string {
  const suffix = measured === 'percent' ? ' %' : '';
  const bounds = [
    ...(min === undefined ? [] : [`${signs?.min ?? '≥'} ${sayFigure(min)}${suffix}`]),
    ...(max === undefined ? [] : [`${signs?.max ?? '≤'} ${sayFigure(max)}${suffix}`]),
  ];
  const said = bounds.join(' and ') || 'no bound set';
  return measured === 'pH' || measured === 'aw' ? `${measured} ${said}` : said;
}

const sayFigure = (figure: PrintedTemperature | number): string => (typeof figure === 'number' ? decimalText(figure, 3) : sayBoth(figure));

function sayConcentration({ printed, min, max, countedAs }: ConcentrationLimit): string {
  const least = min === undefined ? [] : [`≥ ${decimalText(min, 2)} ppm${countedAs ? ` as ${countedAs}` : ''}`];
  const most = max === undefined ? [] : [`≤ ${printed}`];
  return [...least, ...most].join(' and ') || 'no bound set';
}

function sayDwell({ rows }: DwellLimit, unit: TemperatureUnit): string {
  const [first] = rows;
  if (!first) return 'no row';
  if (rows.length <= 3) return rows.map((row) => sayRow(row, unit)).join(', or ');
  const last = rows.at(-1) as DwellRow;
  return `one row of the table held, ${sayRow(first, unit)} … ${sayRow(last, unit)}`;
}

function sayCooling({ stages, startWithinSeconds }: CoolingLimit, unit: TemperatureUnit): string {
  const said = stages.map(({ from, to, withinSeconds, counted }, index) => {
    const isInAll = counted === 'start' && index > 0;
    const stage = sayFromTo(isInAll ? stages[0]?.from : from, to, unit);
    const within = sayDuration(millisecondsOf(withinSeconds));
    return isInAll ? `and ${stage} within ${within} in all` : `${index > 0 ? 'then ' : ''}${stage} within ${within}`;
  });
  if (startWithinSeconds === undefined) return said.join(', ');
  const begun = `begun within ${sayDuration(millisecondsOf(startWithinSeconds))} of cooking`;
  return `${begun}, then ${said.join(', ')}`;
}
