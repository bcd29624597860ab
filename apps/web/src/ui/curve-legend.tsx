import type { ReactNode } from 'react';
import type { CurveProps } from './curve';
import css from './curve.module.css';

/** What the shapes of a drawing mean: only those that are in it. */
export function CurveLegend({ probes, surroundings = [], crossings = [], limits = [], stages = [], arrival, panel }: CurveProps) {
  if (probes.every(({ points }) => points.length === 0)) return null;
  const items: (Shape | false)[] = [
    crossings.length > 0 && { key: 'passed between these two readings', shape: <path className={css.crossing} d="M4 3v14M4 10H36M36 3v14" /> },
    crossings.length > 0 && { key: 'passed by a straight line', shape: <path className={css.instant} d="M20 3L26 10 20 17 14 10z" /> },
    crossings.some(({ chilled }) => chilled !== undefined) && {
      key: 'passed as a core cools', shape: <path className={css.crossing} d="M15 5L25 15M25 5L15 15" />,
    },
    limits.some(({ band }) => band) && {
      key: 'what the thermometer may be wrong by', shape: <rect className={css.error} x="2" y="3" width="36" height="14" />,
    },
    surroundings.length > 0 && { key: 'what it lies in', shape: <path className={css.surroundings} d="M2 10H38" /> },
    arrival?.earliest !== undefined && {
      key: 'expected arrival, earliest to latest', shape: <path className={css.expected} d="M5 2V18M35 2V18M5 18L17 2M17 18L29 2M25 18L35 5" />,
    },
    stages.some(({ deadline }) => deadline !== undefined) && { key: 'due', shape: <path className={css.due} d="M20 2V18" /> },
    ...(panel?.lines ?? []).map(({ label }, i) => ({
      key: label, shape: <path className={css.line} strokeDasharray={i === 0 ? '' : '9 5'} d="M2 10H38" />,
    })),
  ];
  return (
    <ul className={css.legend}>
      {items.filter((item) => item !== false).map(({ key, shape }) => (
        <li key={key}>
          <svg width="40" height="20" viewBox="0 0 40 20" aria-hidden="true">{shape}</svg>
          {key}
        </li>
      ))}
    </ul>
  );
}

type Shape = { key: string; shape: ReactNode };
