import css from './band-curve.module.css';
import { scale, valueTicks } from './curve-scale';
import type { CurvePoint } from './thin-curve';
import { thinCurve } from './thin-curve';

export type BandCurveProps = {
  /** One list of readings per probe; `bound` must be reached before the foot of the band. */
  curve: { probes: CurvePoint[][]; bound: number; unit: string };
  from: number;
  to: number | undefined;
};

export function BandCurve({ curve: { probes, bound, unit }, from, to }: BandCurveProps) {
  const all = probes.flat();
  if (all.length === 0) return null;
  const values = [...all.map(({ value }) => value), bound];
  const ticks = valueTicks([Math.min(...values), Math.max(...values)], 3);
  const x = scale([ticks[0] ?? 0, ticks.at(-1) ?? 1], [0, 100]);
  const y = scale([from, Math.max(to ?? 0, ...all.map(({ at }) => at))], [0, 100]);
  return (
    <div className={css.band} aria-hidden="true">
      <svg className={css.drawing} viewBox="0 0 100 100" preserveAspectRatio="none">
        {ticks.map((value) => (
          <path key={value} className={css.rule} d={`M${x(value)} 0V100`} />
        ))}
        <path className={css.bound} d={`M${x(bound)} 0V100`} />
        {probes.map((points, i) => (
          <polyline
            key={i}
            className={css.line}
            data-probe={i % 3}
            points={thinCurve(points, 60)
              .map(({ at, value }) => `${x(value)},${y(at)}`)
              .join(' ')}
          />
        ))}
      </svg>
      {probes.map(
        (points, i) =>
          points.length <= 60 &&
          points.map(({ at, value }) => (
            <span key={`${i} ${at}`} className={css.reading} style={{ left: `${x(value)}%`, top: `${y(at)}%` }} />
          )),
      )}
      <span
        className={css.label}
        style={x(bound) > 50 ? { right: `${Math.max(0, 95 - x(bound))}%` } : { left: `${Math.max(0, x(bound) - 5)}%` }}
      >
        {bound} {unit}
      </span>
    </div>
  );
}
