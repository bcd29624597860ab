import type { ReactNode } from 'react';
import css from './forecast-words.module.css';
import { writeForecast, type ToldForecast } from './forecast';
import { useNow } from './time-left';
import { useClock, useSay, useSpoken } from './voice';

type ForecastWordsProps = { forecast: ToldForecast; zone: string; degrees: '°F' | '°C' };

/** A forecast always says that it is an estimate. */
export function ForecastWords({ forecast, zone, degrees }: ForecastWordsProps) {
  const say = useSay('explaining');
  const clock = useClock(zone);
  const now = useNow(60_000);
  const told = useSpoken('forecasts');
  const { word, when, next, basis } = writeForecast(forecast, { say, clock, degrees, now, told });
  return (
    <div className={css.forecast} data-state={forecast.state} role="group" aria-label={say('forecast')}>
      <p className={css.head}>
        <ForecastMark state={forecast.state} />
        <strong>{word}</strong>
      </p>
      <p>{when}</p>
      {next && <p className={css.next}>{next}</p>}
      {basis && <p className={css.basis}>{basis}</p>}
    </div>
  );
}

/** The shape alone, where the word stands beside it; none is the shape of a verdict. */
export function ForecastMark({ state }: { state: ToldForecast['state'] }) {
  return (
    <svg className={css.mark} viewBox="0 0 24 24" aria-hidden="true">
      {shape[state]}
    </svg>
  );
}

const strokes = { fill: 'none', stroke: 'currentColor', strokeWidth: 2.2 } as const;
const toTheLine = <path d="M2 12h13M10 6l6 6-6 6M21 2v20" {...strokes} />;
const notYet = <path d="M4 3h16M4 21h16M6 3c0 6 12 12 12 18M18 3c0 6-12 12-12 18" {...strokes} />;

/**
 * On course: an arrow that reaches the line. At risk: an open warning. Will miss: a filled one. Too early: an
 * hourglass.
 */
const shape: Record<ToldForecast['state'], ReactNode> = {
  'on course': toTheLine,
  expected: toTheLine,
  reached: toTheLine,
  'at risk': <path d="M12 2.5L22.5 21H1.5zM12 9v6M12 16.8v2" {...strokes} />,
  'will miss': (
    <>
      <path d="M12 1L23.5 22H.5z" fill="currentColor" />
      <path d="M12 8.5v6.5M12 16.8v2.2" fill="none" stroke="var(--sheet)" strokeWidth="2.6" />
    </>
  ),
  'too early to tell': notYet,
  undetermined: notYet,
};
