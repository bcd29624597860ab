import { useId, type ReactNode } from 'react';
import css from './missed-frame.module.css';
import { StateMark } from './status';

type MissedFrameProps = {
  /** A critical limit, or a limit. */
  kind?: 'Critical limit' | 'Limit';
  /** What was missed: "Core temperature at the end of cooking". */
  what: string;
  measured: string;
  limit: string;
  /** By how much: "8.5 °F short". */
  by?: string;
  because?: string;
  /** Citation of the limit. */
  source?: ReactNode;
  /** The corrective action: recorded, or the form to record it. */
  children?: ReactNode;
};

/** A missed limit breaks the rule of the sheet: what was missed, by how much, and the corrective action under it. */
export function MissedFrame({ kind = 'Limit', what, measured, limit, by, because, source, children }: MissedFrameProps) {
  const id = useId();
  return (
    <section className={css.frame} aria-labelledby={id}>
      <h3 className={css.title} id={id}>
        <StateMark state="missed" />
        <span>
          {kind} missed: {what}
        </span>
      </h3>
      <dl className={css.figures}>
        <div>
          <dt>Measured</dt>
          <dd>{measured}</dd>
        </div>
        <div>
          <dt>Limit</dt>
          <dd>{limit}</dd>
        </div>
        {by && (
          <div>
            <dt>Missed by</dt>
            <dd className={css.by}>{by}</dd>
          </div>
        )}
      </dl>
      {because && <p>{because}</p>}
      {source && <p className={css.source}>{source}</p>}
      {children && <div className={css.action}>{children}</div>}
    </section>
  );
}
