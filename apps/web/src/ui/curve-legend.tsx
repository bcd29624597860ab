import type { ReactNode } from 'react';
import type { CurveProps } from './curve-props';
import css from './curve.module.css';

type Meaning = { says: string; shape: ReactNode; isIn: boolean };

/** What the shapes of a drawing mean: only those that are in it. */
export function CurveLegend(props: CurveProps) {
  if (props.probes.every(({ points }) => points.length === 0)) return null;
  return (
    <ul className={css.legend}>
      {meaningsOf(props)
        .filter(({ isIn }) => isIn)
        .map(({ says, shape }) => (
          <li key={says}>
            <svg width="40" height="20" viewBox="0 0 40 20" aria-hidden>
              {shape}
            </svg>
            {says}
          </li>
        ))}
    </ul>
  );
}

function meaningsOf(props: CurveProps): Meaning[] {
  const { crossings = [], limits = [], stages = [], surroundings = [], arrival, panel } = props;
  return [
    {
      says: 'passed between these two readings',
      shape: <path className={css.crossing} d="M4 3v14M4 10H36M36 3v14" />,
      isIn: crossings.length > 0,
    },
    {
      says: 'passed by a straight line',
      shape: <path className={css.instant} d="M20 3L26 10 20 17 14 10z" />,
      isIn: crossings.length > 0,
    },
    {
      says: 'passed as a core cools',
      shape: <path className={css.crossing} d="M15 5L25 15M25 5L15 15" />,
      isIn: crossings.some(({ chilled }) => chilled !== undefined),
    },
    {
      says: 'what the thermometer may be wrong by',
      shape: <rect className={css.error} x="2" y="3" width="36" height="14" />,
      isIn: limits.some(({ band }) => band),
    },
    {
      says: 'what it lies in',
      shape: <path className={css.surroundings} d="M2 10H38" />,
      isIn: surroundings.length > 0,
    },
    {
      says: 'expected arrival, earliest to latest',
      shape: <path className={css.expected} d="M5 2V18M35 2V18M5 18L17 2M17 18L29 2M25 18L35 5" />,
      isIn: arrival?.earliest !== undefined,
    },
    {
      says: 'most likely',
      shape: <circle className={css.instant} cx="20" cy="10" r="6" />,
      isIn: arrival?.best !== undefined,
    },
    {
      says: 'due',
      shape: <path className={css.due} d="M20 2V18" />,
      isIn: stages.some(({ deadline }) => deadline !== undefined),
    },
    ...(panel?.lines ?? []).map(({ label }, i) => ({
      says: label,
      shape: <path className={css.line} strokeDasharray={i === 0 ? '' : '9 5'} d="M2 10H38" />,
      isIn: true,
    })),
  ];
}
