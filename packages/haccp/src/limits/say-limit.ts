import { sayBoth, sayPrinted } from '../quantity/bound';
import { decimalText } from '../quantity/decimal';
import { sayDuration, millisecondsOf } from '../quantity/duration';
import type { PrintedTemperature, TemperatureUnit } from '../quantity/temperature';
import type { CoolingLimit, CriticalLimit, DwellLimit, DwellRow, RangeLimit } from './limit';

/** A critical limit in one line, as its source prints it. Curves are said in the unit of the readings. */
export function sayLimit(limit: CriticalLimit, unit: TemperatureUnit = '°F'): string {
  switch (limit.kind) {
    case 'range':
      return sayRange(limit);
    case 'concentration':
      return sayConcentration(limit.printed, limit.min);
    case 'dwell':
      return sayDwell(limit, unit);
    case 'cooling':
      return sayCooling(limit, unit);
    case 'bandTime':
      return `${sayFromTo(limit.from, limit.to, unit)} within ${sayDuration(millisecondsOf(limit.maxSeconds))} in all`;
    case 'attestation':
      return limit.statement;
  }
}

/** One row of a dwell table: "145 °F for 4 min", "158 °F, no holding time". */
export function sayRow({ at, seconds }: DwellRow, unit: TemperatureUnit): string {
  const figure = sayPrinted(at, unit);
  return seconds === 0 ? `${figure}, no holding time` : `${figure} for ${sayDuration(millisecondsOf(seconds))}`;
}

/** "130 → 80 °F" */
export function sayFromTo(from: PrintedTemperature, to: PrintedTemperature, unit: TemperatureUnit): string {
  return `${sayPrinted(from, unit).replace(` ${unit}`, '')} → ${sayPrinted(to, unit)}`;
}

function sayRange({ min, max, measured }: RangeLimit): string {
  const suffix = measured === 'percent' ? ' %' : '';
  const bounds = [
    ...(min === undefined ? [] : [`≥ ${sayFigure(min)}${suffix}`]),
    ...(max === undefined ? [] : [`≤ ${sayFigure(max)}${suffix}`]),
  ];
  const said = bounds.join(' and ') || 'no bound set';
  return measured === 'pH' || measured === 'aw' ? `${measured} ${said}` : said;
}

const sayFigure = (figure: PrintedTemperature | number): string =>
  typeof figure === 'number' ? decimalText(figure, 3) : sayBoth(figure);

function sayConcentration(printed: string, min: number | undefined): string {
  const most = `≤ ${printed}`;
  return min === undefined ? most : `≥ ${decimalText(min, 2)} ppm and ${most}`;
}

function sayDwell({ rows }: DwellLimit, unit: TemperatureUnit): string {
  const [first] = rows;
  if (!first) return 'no row';
  if (rows.length <= 3) return rows.map((row) => sayRow(row, unit)).join(', or ');
  const last = rows[rows.length - 1] ?? first;
  return `any row from ${sayRow(first, unit)} to ${sayRow(last, unit)}`;
}

function sayCooling({ stages, startWithinSeconds }: CoolingLimit, unit: TemperatureUnit): string {
  const said = stages.map(({ from, to, withinSeconds, counted }, index) => {
    const inAll = counted === 'start' && index > 0 ? ' in all' : '';
    return `${sayFromTo(from, to, unit)} within ${sayDuration(millisecondsOf(withinSeconds))}${inAll}`;
  });
  const start =
    startWithinSeconds === undefined
      ? []
      : [`begun within ${sayDuration(millisecondsOf(startWithinSeconds))} of cooking`];
  return [...start, ...said].join(', then ');
}
