import type { CurveArrival } from './curve-props';
import { within, type Plot } from './curve-plot';
import css from './curve.module.css';

/** Hatched from the earliest to the latest expected arrival. */
export function Arrival({ plot, arrival }: { plot: Plot; arrival: CurveArrival }) {
  const { x, y, top, bottom, right } = plot;
  const { value, earliest, best, latest, deadline } = arrival;
  if (earliest === undefined) return null;
  const [from, to] = [within(plot, x(earliest)), latest === undefined ? right : within(plot, x(latest))];
  const isShown = (at: number | undefined): at is number => at !== undefined && x(at) <= right;
  return (
    <g>
      <defs>
        <pattern id="expected" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className={css.hatch} d="M0 0V7" />
        </pattern>
      </defs>
      <rect fill="url(#expected)" x={from} width={Math.max(2, to - from)} y={top} height={bottom - top} />
      <path className={css.expected} d={`M${from} ${top}V${bottom}M${to} ${top}V${bottom}`} />
      {isShown(best) && <circle className={css.instant} cx={x(best)} cy={y(value)} r="6" />}
      {isShown(deadline) && <path className={css.deadline} d={`M${x(deadline)} ${top}V${bottom}`} />}
    </g>
  );
}
