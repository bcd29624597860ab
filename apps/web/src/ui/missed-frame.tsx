import { useId, type ReactNode } from 'react';
import css from './missed-frame.module.css';
import { StateMark } from './status';
import { useSay } from './voice';

type MissedFrameProps = {
  isCritical?: boolean;
  /** As in "Core temperature at the end of cooking". */
  what: string;
  measured: string;
  limit: string;
  by?: string;
  because?: string;
  source?: ReactNode;
  children?: ReactNode;
};

export function MissedFrame({ isCritical = false, what, measured, limit, by, because, source, children }: MissedFrameProps) {
  const say = useSay('shared');
  const id = useId();
  return (
    <section className={css.frame} aria-labelledby={id}>
      <h3 className={css.title} id={id}>
        <StateMark state="missed" />
        <span>{say(isCritical ? 'critical-limit-missed' : 'limit-missed', { what })}</span>
      </h3>
      <dl className={css.figures}>
        <div>
          <dt>{say('measured')}</dt>
          <dd>{measured}</dd>
        </div>
        <div>
          <dt>{say('limit')}</dt>
          <dd>{limit}</dd>
        </div>
        {by && (
          <div>
            <dt>{say('missed-by')}</dt>
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
