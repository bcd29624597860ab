import { ofProduct, wordOf, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import { drawnDegrees, scaled, type TemperatureUnit } from '@larderbook/haccp';
import { figuresOf, type Figure } from './figures-of';
import type { Span } from './stretch';

export type Point = { at: number; value: number };

/** `number` selects the kind of line; points are in order of time. */
export type Trace = { id: string; number: number; points: Point[] };

/** Ruled only while its control point was watched. */
export type RuledFigure = Figure & Span & { id: string };

/** `least` and `most` are the ends of the scale. */
export type Curves = { traces: Trace[]; figures: RuledFigure[]; least: number; most: number };

/** Up to `until` (epoch ms); undefined when no series of temperatures was read. */
export function curvesOfLot(lot: Lot, unit: TemperatureUnit, until: number): Curves | undefined {
  const curves = lot.controlPoints.filter(({ controlPoint }) => controlPoint.takenAs === 'curve');
  const traces = curves.flatMap((point) => tracesOf(point, unit));
  const figures = curves.flatMap((point) => figuresAt(point, unit, until));
  const values = [...traces.flatMap(({ points }) => points), ...figures].map(({ value }) => value);
  if (traces.length === 0) return undefined;
  return { traces, figures, least: Math.min(...values), most: Math.max(...values) };
}

function tracesOf({ controlPoint, readings }: ControlPointOnLot, unit: TemperatureUnit): Trace[] {
  const byProbe = new Map<string, Point[]>();
  for (const reading of ofProduct(controlPoint, readings)) {
    const { entered, probe, made, amendedBy } = reading;
    if (amendedBy !== undefined || wordOf(reading) === 'not of the core') continue;
    if (!('unit' in entered) || (entered.unit !== '°F' && entered.unit !== '°C')) continue;
    const temperature = { hundredths: scaled(entered.value, 2) ?? 0, unit: entered.unit };
    const point = { at: Date.parse(made.at), value: drawnDegrees(temperature, unit) };
    byProbe.set(probe, [...(byProbe.get(probe) ?? []), point]);
  }
  return [...byProbe]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([probe, points], number) => ({
      id: `${controlPoint.controlPointId} ${probe}`,
      number,
      points: points.sort((a, b) => a.at - b.at),
    }));
}

/** From the first reading to the end of the stage, or to `until` while it runs; equal figures once. */
function figuresAt({ controlPoint, readings, endedAt }: ControlPointOnLot, unit: TemperatureUnit, until: number): RuledFigure[] {
  const times = readings.map(({ made }) => Date.parse(made.at));
  if (times.length === 0) return [];
  const span = {
    from: Math.min(...times),
    to: Math.max(...times, endedAt === undefined ? until : Date.parse(endedAt)),
  };
  const figures = controlPoint.limits.flatMap(({ limit }) => figuresOf(limit, unit));
  const once = new Map(figures.map((figure) => [figure.label, figure]));
  return [...once.values()].map((figure) => ({
    ...figure,
    ...span,
    id: `${controlPoint.controlPointId} ${figure.label}`,
  }));
}

/** Straight lines run to the row's rules; at least two points or none. */
export function traceIn(row: Span, points: Point[]): Point[] {
  if (row.to <= row.from) {
    const here = valueAt(points, row.from);
    return here === undefined || !points.some(({ at }) => at > row.from)
      ? []
      : [
          { at: row.from, value: here },
          { at: row.to, value: here },
        ];
  }
  const inside = points.filter(({ at }) => at > row.from && at < row.to);
  const edge = (at: number): Point[] => {
    const value = valueAt(points, at);
    return value === undefined ? [] : [{ at, value }];
  };
  const drawn = [...edge(row.from), ...inside, ...edge(row.to)];
  return drawn.length < 2 ? [] : drawn;
}

/** Undefined before the first reading and after the last. */
function valueAt(points: Point[], at: number): number | undefined {
  const next = points.findIndex((point) => point.at >= at);
  const [before, after] = [points[next - 1], points[next]];
  if (!after) return undefined;
  if (after.at === at) return after.value;
  return before && before.value + ((after.value - before.value) * (at - before.at)) / (after.at - before.at);
}
