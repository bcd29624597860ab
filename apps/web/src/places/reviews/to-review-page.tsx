import { listLots } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { dayWords } from '../../ui/moment';
import { PageHeader } from '../../ui/page-header';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import css from './to-review-page.module.css';

/** The lots that wait for their pre-shipment review. */
export function ToReviewPage() {
  return (
    <Stack>
      <PageHeader title="To review" under="Packed, and every control point met or settled: with one more signature they may ship." />
      <Waiting />
    </Stack>
  );
}

function Waiting() {
  const { zone } = useShop();
  const { data, error, refetch } = useQuery(ask(listLots, { standing: 'to-review' }));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  if (data.lots.length === 0) {
    return (
      <EmptyState title="No lot waits for review" action={<LinkButton to="/lots">All lots</LinkButton>}>
        A lot comes here when it is packed and nothing about it is open.
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
              <small>{because}</small>
            </span>
            <span>
              {packages} packages<small>started {dayWords(startedAt, zone)}</small>
            </span>
          </Link>
        </li>
      ))}
    </ol>
  );
}
