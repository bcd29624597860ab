import { ofProduct, type ControlPointOnLot } from '@larderbook/contracts';
import type { FigureData } from '@larderbook/documents';
import {
  convertDegrees,
  degrees,
  sayDuration,
  sayPrinted,
  sayRow,
  type CriticalLimit,
  type Degrees,
  type PrintedTemperature,
  type TemperatureUnit,
} from '@larderbook/haccp';

type Line = FigureData['limits'][number];

/** The curve of a control point with its limits, all in one unit. Corrected readings are not drawn. */
export function figureOf(
  { controlPoint, readings, bands }: ControlPointOnLot,
  unit: TemperatureUnit,
): FigureData | undefined {
  if (controlPoint.takenAs !== 'curve') return undefined;
  const points = readings.flatMap(({ entered, made, probe, amendedBy }) =>
    !amendedBy && 'value' in entered && (entered.unit === '°F' || entered.unit === '°C')
      ? [{ probe, at: Date.parse(made.at), value: inUnit(degrees(entered.value, entered.unit), unit) }]
      : [],
  );
  const probes = [...new Set(points.map(({ probe }) => probe))];
  const peak = Math.max(...ofProduct(controlPoint, points).map(({ value }) => value));
  return {
    title: `${controlPoint.name}: temperature`,
    unit,
    series: probes.map((probe) => ({
      label: probe || 'core',
      points: points.filter((point) => point.probe === probe).map(({ at, value }) => ({ at, value })),
    })),
    limits: unique(controlPoint.limits.flatMap(({ limit }) => linesOf(limit, unit, peak))),
    stages: bands.map(({ label, startAt, endAt, deadline, kind }) => ({
      label,
      from: startAt,
      to: endAt,
      deadline,
      missed: kind === 'missed',
      spent:
        endAt === undefined
          ? undefined
          : sayDuration(endAt - startAt) + (deadline === undefined ? '' : ` of ${sayDuration(deadline - startAt)}`),
    })),
  };
}

function linesOf(limit: CriticalLimit, unit: TemperatureUnit, peak: number): Line[] {
  const line = (at: PrintedTemperature, label: string): Line => ({ value: figureIn(at, unit), label });
  switch (limit.kind) {
    case 'dwell':
      return rowToDraw(limit.rows, unit, peak).map((row) => line(row.at, `≥ ${sayRow(row, unit)}`));
    case 'cooling':
      return limit.stages.flatMap(({ from, to, withinSeconds }, index) => [
        ...(index === 0 ? [line(from, sayPrinted(from, unit))] : []),
        line(to, `${sayPrinted(to, unit)} within ${sayDuration(withinSeconds * 1000)}`),
      ]);
    case 'bandTime':
      return [line(limit.from, sayPrinted(limit.from, unit)), line(limit.to, sayPrinted(limit.to, unit))];
    case 'range':
      return [
        ...(typeof limit.min === 'object' ? [line(limit.min, `≥ ${sayPrinted(limit.min, unit)}`)] : []),
        ...(typeof limit.max === 'object' ? [line(limit.max, `≤ ${sayPrinted(limit.max, unit)}`)] : []),
      ];
    default:
      return [];
  }
}

/** Of a table of rows the one that the curve could satisfy: the hottest it reached, or else the coldest. */
function rowToDraw<Row extends { at: PrintedTemperature }>(
  rows: readonly Row[],
  unit: TemperatureUnit,
  peak: number,
): Row[] {
  const ordered = [...rows].sort((a, b) => figureIn(a.at, unit) - figureIn(b.at, unit));
  const reached = ordered.filter(({ at }) => figureIn(at, unit) <= peak);
  return reached.length > 0 ? reached.slice(-1) : ordered.slice(0, 1);
}

/** A printed figure in degrees of one unit; converted only where the source does not print that unit. */
function figureIn(printed: PrintedTemperature, unit: TemperatureUnit): number {
  const other = unit === '°F' ? '°C' : '°F';
  const hundredths = printed[unit];
  return hundredths === undefined ? inUnit({ hundredths: printed[other] ?? NaN, unit: other }, unit) : hundredths / 100;
}

function inUnit(temperature: Degrees, unit: TemperatureUnit): number {
  const { numerator, denominator } = convertDegrees(temperature, unit);
  return numerator / denominator / 100;
}

const unique = (lines: Line[]): Line[] => [
  ...new Map(lines.map((line) => [`${line.value} ${line.label}`, line])).values(),
];
