import type { CurvePanel } from './curve-props';
import { extent, type Plot } from './curve-plot';
import { placesOf } from './curve-probe';
import { scale, valueTicks } from './curve-scale';
import css from './curve.module.css';

const dashes = ['', '9 5', '2 4'];

export function Panel({ plot, panel }: { plot: Plot; panel: CurvePanel }) {
  if (!plot.panel) return null;
  const { left, right, x } = plot;
  const { top, bottom } = plot.panel;
  const [, most] = extent(panel.lines.flatMap(({ points }) => points.map(({ value }) => value)));
  const ticks = valueTicks([0, Math.max(1, most)], 6);
  const y = scale([0, ticks.at(-1) ?? 1], [bottom, top]);
  return (
    <g>
      <text className={css.stageLabel} x={left} y={top - 14}>
        {panel.title}
      </text>
      {ticks.map((value) => (
        <g key={value}>
          <path className={css.rule} d={`M${left} ${y(value)}H${right}`} />
          <text className={css.figure} x={left - 8} y={y(value) + 5} textAnchor="end">
            {value}
          </text>
        </g>
      ))}
      <path className={css.axis} d={`M${left} ${bottom}H${right}`} />
      {panel.lines.map(({ label, points }, i) => (
        <polyline key={label} className={css.line} strokeDasharray={dashes[i % dashes.length]} points={placesOf({ x, y }, points)} />
      ))}
    </g>
  );
}
