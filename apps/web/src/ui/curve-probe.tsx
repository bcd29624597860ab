import type { Probe } from './curve-props';
import type { Plot } from './curve-plot';
import css from './curve.module.css';
import { thinCurve, type CurvePoint } from './thin-curve';

const dashes = ['', '9 5', '2 4', '12 4 2 4'];
/** Hand-read values are few enough to be shown as points. */
const mostMarks = 80;

export function ProbeLine({ plot, probe, number }: { plot: Plot; probe: Probe; number: number }) {
  const { x, y, left, right } = plot;
  const points = thinCurve(probe.points, Math.max(60, Math.floor((right - left) / 2)));
  const last = points.at(-1);
  return (
    <g>
      <polyline className={css.line} strokeDasharray={dashes[number % dashes.length]} points={placesOf(plot, points)} />
      {probe.points.length <= mostMarks && points.map(({ at, value }) => <Mark key={at} kind={number} x={x(at)} y={y(value)} />)}
      {last && plot.isLabelled && (
        <text className={css.probeLabel} x={x(last.at) + 11} y={y(last.value) + 5}>
          {probe.label}
        </text>
      )}
    </g>
  );
}

export function SurroundingsLine({ plot, points }: { plot: Plot; points: CurvePoint[] }) {
  return (
    <g>
      <polyline className={css.surroundings} points={placesOf(plot, thinCurve(points, 200))} />
      {points.length <= mostMarks &&
        points.map(({ at, value }) => <circle key={at} className={css.around} cx={plot.x(at)} cy={plot.y(value)} r="3" />)}
    </g>
  );
}

export const placesOf = ({ x, y }: Pick<Plot, 'x' | 'y'>, points: CurvePoint[]): string =>
  points.map(({ at, value }) => `${x(at).toFixed(1)},${y(value).toFixed(1)}`).join(' ');

function Mark({ kind, x, y }: { kind: number; x: number; y: number }) {
  const shapes = ['M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0-9 0z', 'M-4-4h8v8h-8z', 'M0-5.5L5 4H-5z', 'M0-5.5L5.5 0 0 5.5-5.5 0z'];
  return <path className={css.mark} d={shapes[kind % shapes.length]} transform={`translate(${x} ${y})`} />;
}
