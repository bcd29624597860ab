import type { CurveLimit, Probe } from './curve-props';
import type { Plot } from './curve-plot';
import css from './curve.module.css';
import { thinCurve } from './thin-curve';

/** The band about a limit is what the instrument may be wrong by. */
export function LimitLines({ plot: { left, right, y }, limits }: { plot: Plot; limits: CurveLimit[] }) {
  return (
    <g>
      {limits.map(({ label, value, band }) => (
        <g key={label}>
          {band && <rect className={css.error} x={left} width={right - left} y={y(band[1])} height={y(band[0]) - y(band[1])} />}
          <path className={css.limit} d={`M${left} ${y(value)}H${right}`} />
        </g>
      ))}
    </g>
  );
}

export function LimitLabels({ plot, limits, probes }: { plot: Plot; limits: CurveLimit[]; probes: Probe[] }) {
  return (
    <g>
      {limits.map(({ value, label }) => (
        <text key={label} className={css.limitLabel} y={plot.y(value) - 7} {...clearest(plot, probes, value, label)}>
          {label}
        </text>
      ))}
    </g>
  );
}

/** Of left, middle and right the place farthest from the curves. */
function clearest({ left, right, x, y }: Plot, probes: Probe[], value: number, label: string) {
  const [room, half] = [8, label.length * 4];
  const places = [
    { x: left + room, textAnchor: 'start' as const, middle: left + room + half },
    { x: (left + right) / 2, textAnchor: 'middle' as const, middle: (left + right) / 2 },
    { x: right - room, textAnchor: 'end' as const, middle: right - room - half },
  ];
  const points = probes.flatMap((probe) => thinCurve(probe.points, 60));
  const aside = (at: number, middle: number) => Math.max(0, Math.abs(x(at) - middle) - half);
  const clearance = (middle: number) =>
    Math.min(...points.map((point) => Math.hypot(aside(point.at, middle), y(point.value) - y(value) + 12)));
  const [best] = places.toSorted((a, b) => clearance(b.middle) - clearance(a.middle));
  return { x: best?.x, textAnchor: best?.textAnchor };
}
