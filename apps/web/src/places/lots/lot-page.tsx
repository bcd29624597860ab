import { showLot } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { useOutbox } from '../../outbox/use-outbox';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { LotView } from './lot-view';

/** Other tablets record on the same lot: look again this often. */
const lookAgainMs = 20_000;

/** One lot: where it stands, what to do next, its control points, and its day sheet. */
export function LotPage() {
  const { lotId = '' } = useParams({ strict: false });
  const { data: lot, error, refetch } = useQuery({ ...ask(showLot, { lotId }), refetchInterval: lookAgainMs });
  const { waiting, parked } = useOutbox();
  if (lot) return <LotView lot={lot} unsent={[...waiting, ...parked]} />;
  if (waiting.some(({ id }) => id === lotId)) {
    return (
      <EmptyState title="This lot is kept on this device">
        Its sheet opens here as soon as it has been sent. It is sent by itself when the connection is back.
      </EmptyState>
    );
  }
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
