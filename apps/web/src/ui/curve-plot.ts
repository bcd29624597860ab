import type { CurveProps } from './curve-props';
import { scale, valueTicks, type Span } from './curve-scale';

/** Pixels. */
export type Plot = {
  width: number;
  height: number;
  left: number;
  right: number;
  top: number;
  /** The foot of the curve: its time axis. */
  bottom: number;
  /** Each stage has a row under the time axis, and the panel stands under them. */
  stagesTop: number;
  panel?: { top: number; bottom: number };
  times: Span;
  /** The newest reading: a running stage is drawn up to it. */
  newest: number;
  ticks: number[];
  x: (at: number) => number;
  y: (value: number) => number;
  /** Wide enough to name a probe at the end of its line. */
  isLabelled: boolean;
};

const room = { top: 24, right: 16, left: 46 };
const curveHeight = 300;
const axisHeight = 34;
export const stageHeight = 40;
const panelHeight = 150;
/** So much of what lies ahead is shown, as a share of what was read. */
const ahead = 0.6;

export function plotOf(props: CurveProps, width: number): Plot {
  const { probes, stages = [], limits = [], panel } = props;
  const [times, newest] = timesShown(props);
  const values = [
    ...probes.flatMap(({ points }) => points.map(({ value }) => value)),
    ...limits.flatMap(({ value, band = [] }) => [value, ...band]),
    ...(props.surroundings ?? []).map(({ value }) => value),
  ];
  const ticks = valueTicks(extent(values), curveHeight / 40);
  const isLabelled = width >= 480;
  const right = width - (isLabelled ? 22 + 8 * longest(probes.map(({ label }) => label)) : room.right);
  const bottom = room.top + curveHeight;
  const stagesTop = bottom + axisHeight;
  const panelTop = stagesTop + stages.length * stageHeight + 34;
  return {
    width,
    height: panel ? panelTop + panelHeight + 12 : stagesTop + stages.length * stageHeight + 4,
    left: room.left,
    right,
    top: room.top,
    bottom,
    stagesTop,
    panel: panel && { top: panelTop, bottom: panelTop + panelHeight },
    times,
    newest,
    ticks,
    x: scale(times, [room.left, right]),
    y: scale([ticks[0] ?? 0, ticks.at(-1) ?? 1], [bottom, room.top]),
    isLabelled,
  };
}

/** From the first reading or start of a stage to the last, and on to what is expected or due when that is near. */
function timesShown({ probes, stages = [], surroundings = [], arrival }: CurveProps): [times: Span, newest: number] {
  const read = [...probes.flatMap(({ points }) => points), ...surroundings].map(({ at }) => at);
  const newest = extent(read)[1];
  const [first, last] = extent([...read, ...stages.flatMap(({ from, to = from }) => [from, to])]);
  const due = [...stages.map(({ deadline }) => deadline), arrival?.latest, arrival?.deadline];
  const furthest = extent([last, ...due.filter((at) => at !== undefined)])[1];
  return [[first, Math.min(furthest, last + (last - first) * ahead)], newest];
}

export function extent(figures: number[]): Span {
  let [low, high] = [Infinity, -Infinity];
  for (const figure of figures) {
    if (figure < low) low = figure;
    if (figure > high) high = figure;
  }
  return [low, high];
}

const longest = (labels: string[]): number => Math.max(0, ...labels.map(({ length }) => length));

export const within = ({ left, right }: Plot, x: number): number => Math.min(Math.max(x, left), right);
