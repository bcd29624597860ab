import { Status, type State } from './status';
import { statusOf } from './status-of';
import css from './verdict-words.module.css';

/** Of this device's verdict as of the server's. */
export type SaidVerdict = {
  kind: Exclude<State, 'running'>;
  margin?: string;
  because: string;
  next?: string;
  running?: unknown;
  still?: 'cooling';
};

/** Tells why, and what to do now. */
export function VerdictWords({ verdict, size = 'line' }: { verdict: SaidVerdict; size?: 'line' | 'large' }) {
  return (
    <div className={css.verdict} data-kind={verdict.kind}>
      <Status {...statusOf(verdict)} margin={verdict.margin} size={size} />
      <p>{verdict.because}</p>
      {verdict.next && <p className={css.next}>{verdict.next}</p>}
    </div>
  );
}
