import { listLots } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { AccountWords } from '../../ui/account-words';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import css from './to-review-page.module.css';

export function ToReviewPage() {
  const say = useSay('reviews');
  return (
    <Stack>
      <PageHeader title={say('title')} under={say('intro')} />
      <Waiting />
    </Stack>
  );
}

function Waiting() {
  const say = useSay('reviews');
  const { data, error, refetch } = useQuery(ask(listLots, { standing: 'to-review' }));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  if (data.lots.length === 0) {
    return (
      <EmptyState title={say('none-waits')} action={<LinkButton to="/lots">{say('all-lots')}</LinkButton>}>
        {say('comes-when')}
      </EmptyState>
    );
  }
  return (
    <ol className={css.lots}>
      {data.lots.map(({ lotId, code, productName, startedAt, packages, because }) => (
        <li key={lotId}>
          <Link to="/lots/$lotId/review" params={{ lotId }} className={css.lot}>
            <span>
              <strong>{code}</strong> {productName}
              <small>
                <AccountWords account={because} />
              </small>
            </span>
            <span>
              {say('packages', { count: packages })}
              <small>{say('started', { day: { at: startedAt, show: 'day' } })}</small>
            </span>
          </Link>
        </li>
      ))}
    </ol>
  );
}
