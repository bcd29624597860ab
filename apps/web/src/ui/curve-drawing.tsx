import type { CurveProps, Probe } from './curve';
import css from './curve.module.css';
import { scale, timeTicks, valueTicks, type Span } from './curve-scale';
import { dayWords, timeWords } from './moment';
import { thinCurve } from './thin-curve';

/** Room around the plot for figures and labels, in pixels. */
const room = { top: 30, right: 16, bottom: 34, left: 46 };
const dashes = ['', '9 5', '2 4', '12 4 2 4'];

/** The drawing itself; what it says is in the figure's caption and table. */
export function CurveDrawing({ unit, zone, probes, limits = [], stages = [], height = 340, width }: CurveProps & { width: number }) {
  const all = probes.flatMap((probe) => probe.points);
  const times = [...all.map(({ at }) => at), ...stages.flatMap(({ from, to }) => [from, to])];
  const values = [...all.map(({ value }) => value), ...limits.map(({ value }) => value)];
  if (all.length === 0) return <p className={css.none}>No reading yet.</p>;

  const span: Span = extent(times);
  const ticks = valueTicks(extent(values), Math.max(3, height / 60));
  const labelled = width >= 480;
  const right = width - (labelled ? 20 + 8 * Math.max(...probes.map(({ label }) => label.length)) : room.right);
  const x = scale(span, [room.left, right]);
  const y = scale([ticks[0] ?? 0, ticks.at(-1) ?? 1], [height - room.bottom, room.top]);

  return (
    <svg className={css.drawing} width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {stages.map(({ label, from, to }, i) => (
        <g key={label}>
          <rect className={css.stage} data-even={i % 2 === 0} x={x(from)} width={Math.max(0, x(to) - x(from))} y={room.top} height={height - room.top - room.bottom} />
          <text className={css.stageLabel} x={x(from) + 6} y={room.top - 10}>{label}</text>
        </g>
      ))}
      {ticks.map((value) => (
        <g key={value}>
          <path className={css.rule} d={`M${room.left} ${y(value)}H${right}`} />
          <text className={css.figure} x={room.left - 8} y={y(value) + 5} textAnchor="end">{value}</text>
        </g>
      ))}
      <text className={css.figure} x={room.left - 8} y={14} textAnchor="end">{unit}</text>
      {timeTicks(span, Math.max(2, Math.floor((right - room.left) / 76)), zone).map((at) => (
        <g key={at}>
          <path className={css.tick} d={`M${x(at)} ${height - room.bottom}v6`} />
          <text className={css.figure} x={x(at)} y={height - 10} textAnchor="middle">{tickWords(at, zone)}</text>
        </g>
      ))}
      <path className={css.axis} d={`M${room.left} ${height - room.bottom}H${right}`} />
      {limits.map(({ value, label }) => <path key={label} className={css.limit} d={`M${room.left} ${y(value)}H${right}`} />)}
      {probes.map((probe, i) => <ProbeLine key={probe.label} probe={probe} number={i} x={x} y={y} columns={right - room.left} labelled={labelled} />)}
      {limits.map(({ value, label }) => (
        <text key={label} className={css.limitLabel} y={y(value) - 7} {...clearest(probes, value, label, x, y, [room.left, right])}>{label}</text>
      ))}
    </svg>
  );
}

/** "14:00", and the day where a new one begins. */
function tickWords(at: number, zone: string): string {
  const time = timeWords(at, zone);
  return time === '00:00' ? dayWords(at, zone).split(' ').slice(0, 2).join(' ') : time;
}

type ProbeLineProps = {
  probe: Probe;
  number: number;
  x: (at: number) => number;
  y: (value: number) => number;
  columns: number;
  labelled: boolean;
};

function ProbeLine({ probe, number, x, y, columns, labelled }: ProbeLineProps) {
  const points = thinCurve(probe.points, Math.max(60, Math.floor(columns / 2)));
  const last = points.at(-1);
  const handRead = probe.points.length <= 80;
  return (
    <g>
      <polyline
        className={css.line} strokeDasharray={dashes[number % dashes.length]}
        points={points.map(({ at, value }) => `${x(at).toFixed(1)},${y(value).toFixed(1)}`).join(' ')}
      />
      {handRead && points.map(({ at, value }) => <Mark key={at} kind={number} x={x(at)} y={y(value)} />)}
      {last && labelled && <text className={css.probeLabel} x={x(last.at) + 11} y={y(last.value) + 5}>{probe.label}</text>}
    </g>
  );
}

/** Where along its line a limit's label is farthest from the curves: at the left, in the middle or at the right. */
function clearest(probes: Probe[], value: number, label: string, x: Mapped, y: Mapped, [left, right]: Span) {
  const [room, half] = [8, label.length * 4];
  const places = [
    { x: left + room, textAnchor: 'start' as const, middle: left + room + half },
    { x: (left + right) / 2, textAnchor: 'middle' as const, middle: (left + right) / 2 },
    { x: right - room, textAnchor: 'end' as const, middle: right - room - half },
  ];
  const points = probes.flatMap((probe) => thinCurve(probe.points, 60));
  const clearance = (middle: number) =>
    Math.min(...points.map((point) => Math.hypot(Math.max(0, Math.abs(x(point.at) - middle) - half), y(point.value) - y(value) + 12)));
  const [best] = places.toSorted((a, b) => clearance(b.middle) - clearance(a.middle));
  return { x: best?.x, textAnchor: best?.textAnchor };
}
type Mapped = (figure: number) => number;

/** Disc, square, triangle, diamond: one shape for each probe. */
function Mark({ kind, x, y }: { kind: number; x: number; y: number }) {
  const shapes = ['M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z', 'M-4-4h8v8h-8z', 'M0-5.5L5 4H-5z', 'M0-5.5L5.5 0 0 5.5-5.5 0z'];
  return <path className={css.mark} d={shapes[kind % shapes.length]} transform={`translate(${x} ${y})`} />;
}

function extent(figures: number[]): Span {
  let [low, high] = [Infinity, -Infinity];
  for (const figure of figures) {
    if (figure < low) low = figure;
    if (figure > high) high = figure;
  }
  return [low, high];
}
