import type { FigureData } from '../lot-record-data';
import type { Instant } from '../sheet-data';
import type { Area } from '../page/area';
import { scale, type Scale } from './scale';

/** The sheet's margin line is the temperature axis. */
export type Plot = {
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** Limits and stages are named in this column at the right. */
  labels: { x: number; width: number };
  x: Scale;
  y: Scale;
  /** A running stage is filled up to the newest reading. */
  newest: Instant;
};

export const plotHeight = 144;
const labelColumn = 124;
/** The most shown after the last reading, as a share of the time read. */
const [ahead, farAhead] = [0.35, 0.7];

export function plotAt(data: FigureData, area: Area, top: number): Plot {
  const [left, right, bottom] = [area.margin, area.right - labelColumn, top + plotHeight];
  return {
    left,
    right,
    top,
    bottom,
    labels: labelsAt(area),
    newest: greatest(data.series.map(({ points }) => points.at(-1)?.at ?? -Infinity)),
    x: scale(timesShown(data), [left, right - 6]),
    y: scale(degreesShown(data), [bottom, top]),
  };
}

export function labelsAt({ right }: Area): Plot['labels'] {
  return { x: right - labelColumn + 8, width: labelColumn - 8 };
}

/** Goes on to a near deadline or arrival, so that time to spare can be seen. */
function timesShown({ series, stages, arrival }: FigureData): [Instant, Instant] {
  const taken = series.flatMap(({ points }) => [points[0]?.at ?? Infinity, points.at(-1)?.at ?? -Infinity]);
  const first = least([...taken, ...stages.map(({ from }) => from)]);
  const last = greatest([...taken, ...stages.flatMap(({ from, to }) => [from, to ?? from])]);
  const expected = arrival?.latest ?? arrival?.earliest ?? last;
  const deadline = greatest([last, expected, ...stages.flatMap((stage) => stage.deadline ?? [])]);
  return [first, Math.min(deadline, last + (last - first) * (arrival ? farAhead : ahead))];
}

function degreesShown({ series, limits, surroundings = [] }: FigureData): [number, number] {
  const ruled = limits.flatMap(({ value, band = [] }) => [value, ...band]);
  const bounds = [...ruled, ...surroundings.map(({ value }) => value)];
  let [low, high] = [least(bounds), greatest(bounds)];
  for (const { points } of series) {
    for (const { value } of points) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  const air = Math.max((high - low) * 0.06, 1);
  return [low - air, high + air];
}

const least = (values: number[]) => values.reduce((low, value) => Math.min(low, value), Infinity);
const greatest = (values: number[]) => values.reduce((high, value) => Math.max(high, value), -Infinity);
