import type { SayOf } from '@larderbook/messages';
import type { ReactNode } from 'react';
import type { CurveProps } from './curve-props';
import css from './curve.module.css';
import { useSay } from './voice';

type Meaning = { says: string; shape: ReactNode; isIn: boolean };

export function CurveLegend(props: CurveProps) {
  const say = useSay('explaining');
  if (props.probes.every(({ points }) => points.length === 0)) return null;
  return (
    <ul className={css.legend}>
      {meaningsOf(props, say)
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

function meaningsOf(props: CurveProps, say: SayOf<'explaining'>): Meaning[] {
  const { crossings = [], limits = [], stages = [], surroundings = [], arrival, panel } = props;
  return [
    {
      says: say('passed-between'),
      shape: <path className={css.crossing} d="M4 3v14M4 10H36M36 3v14" />,
      isIn: crossings.length > 0,
    },
    {
      says: say('passed-straight'),
      shape: <path className={css.instant} d="M20 3L26 10 20 17 14 10z" />,
      isIn: crossings.length > 0,
    },
    {
      says: say('passed-cooling'),
      shape: <path className={css.crossing} d="M15 5L25 15M25 5L15 15" />,
      isIn: crossings.some(({ chilled }) => chilled !== undefined),
    },
    {
      says: say('thermometer-error'),
      shape: <rect className={css.error} x="2" y="3" width="36" height="14" />,
      isIn: limits.some(({ band }) => band),
    },
    {
      says: say('surroundings'),
      shape: <path className={css.surroundings} d="M2 10H38" />,
      isIn: surroundings.length > 0,
    },
    {
      says: say('expected-arrival'),
      shape: <path className={css.expected} d="M5 2V18M35 2V18M5 18L17 2M17 18L29 2M25 18L35 5" />,
      isIn: arrival?.earliest !== undefined,
    },
    {
      says: say('most-likely'),
      shape: <circle className={css.instant} cx="20" cy="10" r="6" />,
      isIn: arrival?.best !== undefined,
    },
    {
      says: say('due'),
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
