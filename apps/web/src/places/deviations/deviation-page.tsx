import { showDeviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { ask } from '../../api/ask';
import { useOutbox } from '../../outbox/use-outbox';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { DeviationView } from './deviation-view';

/** One deviation, from the missed limit to its closing. */
export function DeviationPage() {
  const { deviationId = '' } = useParams({ strict: false });
  const { data: deviation, error, refetch } = useQuery(ask(showDeviation, { deviationId }));
  const { waiting } = useOutbox();
  if (deviation) return <DeviationView deviation={deviation} />;
  if (waiting.some(({ id }) => id === deviationId)) {
    return <EmptyState title="This deviation is kept on this device">Its page opens here as soon as it has been sent.</EmptyState>;
  }
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
