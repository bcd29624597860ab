import type { Finding } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { StateMark, type State } from '../../ui/status';
import { useSay } from '../../ui/voice';
import type { Blocker } from './blockers';
import css from './review.module.css';
import { useFindings } from './use-findings';

const mark: Partial<Record<Finding['kind'], State>> = {
  missing: 'undetermined',
  undetermined: 'undetermined',
  missed: 'missed',
  open: 'missed',
};

export function InTheWay({ lotId, blockers }: { lotId: string; blockers: Blocker[] }) {
  const say = useSay('reviews');
  const tell = useFindings();
  if (blockers.length === 0)
    return (
      <p className={css.clear}>
        <StateMark state="met" /> {say('complete')}
      </p>
    );
  return (
    <ol className={css.list}>
      {blockers.map(({ kind, what, next, deviationId }) => (
        <li key={tell(what)} className={css.blocker} data-kind={kind}>
          <StateMark state={mark[kind] ?? 'undetermined'} />
          <div className={css.words}>
            <p className={css.what}>{tell(what)}</p>
            {next && <p>{tell(next)}</p>}
          </div>
          {deviationId ? (
            <LinkButton to="/deviations/$deviationId" params={{ deviationId }}>
              {say('open-deviation')}
            </LinkButton>
          ) : (
            <LinkButton to="/lots/$lotId" params={{ lotId }}>
              {say('to-the-lot')}
            </LinkButton>
          )}
        </li>
      ))}
    </ol>
  );
}
