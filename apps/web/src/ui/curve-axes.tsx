import type { Plot } from './curve-plot';
import { timeTicks } from './curve-scale';
import css from './curve.module.css';
import { useClock } from './voice';
import { wallTime } from './wall-time';

/** Round values across, round times of the wall clock along the foot. */
export function Axes({ plot, unit, zone }: { plot: Plot; unit: string; zone: string }) {
  const clock = useClock(zone);
  const { left, right, bottom, ticks, times, x, y } = plot;
  return (
    <g>
      {ticks.map((value) => (
        <g key={value}>
          <path className={css.rule} d={`M${left} ${y(value)}H${right}`} />
          <text className={css.figure} x={left - 8} y={y(value) + 5} textAnchor="end">
            {value}
          </text>
        </g>
      ))}
      <text className={css.figure} x={left - 8} y={12} textAnchor="end">
        {unit}
      </text>
      {timeTicks(times, Math.max(2, Math.floor((right - left) / 76)), zone).map((at) => (
        <g key={at}>
          <path className={css.tick} d={`M${x(at)} ${bottom}v6`} />
          <text className={css.figure} x={x(at)} y={bottom + 23} textAnchor="middle">
            {isNewDay(at, zone) ? clock.shortDay(at) : clock.time(at)}
          </text>
        </g>
      ))}
      <path className={css.axis} d={`M${left} ${bottom}H${right}`} />
    </g>
  );
}

/** Where a new day begins, its date stands instead of midnight. */
const isNewDay = (at: number, zone: string): boolean => wallTime(at, zone).endsWith('T00:00');
