import { showLot } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { ask } from '../../api/ask';
import { useOutbox } from '../../outbox/use-outbox';
import { EmptyState } from '../../ui/empty-state';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { useSay } from '../../ui/voice';
import { LotView } from './lot-view';

/** Other tablets record on the same lot. */
const lookAgainMs = 20_000;

export function LotPage(): ReactNode {
  const say = useSay('lots');
  const { lotId } = useParams({ from: '/lots/$lotId' });
  const { data: lot, error, refetch } = useQuery({ ...ask(showLot, { lotId }), refetchInterval: lookAgainMs });
  const { waiting, parked } = useOutbox();
  if (lot) return <LotView lot={lot} unsent={[...waiting, ...parked]} />;
  if (waiting.some(({ id }) => id === lotId)) {
    return <EmptyState title={say('kept-here')}>{say('opens-when-sent')}</EmptyState>;
  }
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
