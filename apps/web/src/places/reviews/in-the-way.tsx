import type { Finding } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { StateMark, type State } from '../../ui/status';
import type { Blocker } from './blockers';
import css from './review.module.css';

const mark: Partial<Record<Finding['kind'], State>> = {
  missing: 'undetermined',
  undetermined: 'undetermined',
  missed: 'missed',
  open: 'missed',
};

/** What keeps the lot from being signed for: each thing on its rule, with what to do and the way there. */
export function InTheWay({ lotId, blockers }: { lotId: string; blockers: Blocker[] }) {
  if (blockers.length === 0)
    return (
      <p className={css.clear}>
        <StateMark state="met" /> Nothing. The records are complete, and every limit is met or settled.
      </p>
    );
  return (
    <ol className={css.list}>
      {blockers.map(({ kind, what, next, deviationId }) => (
        <li key={what} className={css.blocker} data-kind={kind}>
          <StateMark state={mark[kind] ?? 'undetermined'} />
          <div className={css.words}>
            <p className={css.what}>{what}</p>
            {next && <p>{next}</p>}
          </div>
          {deviationId ? (
            <LinkButton to="/deviations/$deviationId" params={{ deviationId }}>
              Open its deviation
            </LinkButton>
          ) : (
            <LinkButton to="/lots/$lotId" params={{ lotId }}>
              Go to the lot
            </LinkButton>
          )}
        </li>
      ))}
    </ol>
  );
}
