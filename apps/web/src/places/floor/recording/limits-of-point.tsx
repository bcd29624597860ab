import type { ControlPoint } from '@larderbook/contracts';
import { sayLimit, type TemperatureUnit } from '@larderbook/haccp';
import css from './recording.module.css';

/** The limits of a control point as their sources print them, in sight while a value is entered. */
export function LimitsOfPoint({ point, unit }: { point: ControlPoint; unit: TemperatureUnit }) {
  return (
    <span className={css.limits}>
      {point.limits.map(({ limitId, limit }) => (
        <span key={limitId}>
          {sayLimit(limit, unit)}
          <small>{limit.source.citation}{limit.source.confirmed ? '' : ' (not confirmed)'}</small>
        </span>
      ))}
    </span>
  );
}
