import type { CurveCrossing } from './curve-props';
import type { Plot } from './curve-plot';
import css from './curve.module.css';

/** A bracket spans the readings on either side; a diamond marks where straight lines pass the figure. */
export function Crossings({ plot, crossings }: { plot: Plot; crossings: CurveCrossing[] }) {
  return (
    <g>
      {crossings.map((crossing) => (
        <g key={`${crossing.label} ${crossing.by}`} transform={`translate(0 ${plot.y(crossing.value)})`}>
          <path className={css.crossing} d={bracket(plot.x(crossing.after), plot.x(crossing.by))} />
          <path className={css.instant} d={diamond} transform={`translate(${plot.x(crossing.straight)} 0)`} />
          {crossing.chilled !== undefined && (
            <path className={css.crossing} d={cross} transform={`translate(${plot.x(crossing.chilled)} 0)`} />
          )}
        </g>
      ))}
    </g>
  );
}

const diamond = 'M0-7L6 0 0 7-6 0z';
const cross = 'M-5-5L5 5M5-5L-5 5';
const bracket = (from: number, to: number): string => `M${from}-7v14M${from} 0H${to}M${to}-7v14`;
