import { showDeviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { ask } from '../../api/ask';
import { useOutbox } from '../../outbox/use-outbox';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { useSay } from '../../ui/voice';
import { DeviationView } from './deviation-view';
import { unsentAbout } from './unsent-about';

export function DeviationPage(): ReactNode {
  const say = useSay('deviations');
  const { deviationId } = useParams({ from: '/deviations/$deviationId' });
  const { data: deviation, error, refetch } = useQuery(ask(showDeviation, { deviationId }));
  const { waiting, parked } = useOutbox();
  if (deviation) return <DeviationView deviation={deviation} unsent={unsentAbout(deviation, [...waiting, ...parked])} />;
  if (waiting.some(({ id }) => id === deviationId)) {
    return <EmptyState title={say('kept-here')}>{say('opens-when-sent')}</EmptyState>;
  }
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
