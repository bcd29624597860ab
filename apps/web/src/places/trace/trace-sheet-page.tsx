import { showTrace } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { TraceSheet } from './trace-sheet';

export function TraceSheetPage(): ReactNode {
  const { nodeId } = useParams({ from: '/trace/$nodeId' });
  const { data, error, refetch } = useQuery(ask(showTrace, { nodeId }));
  if (data) return <TraceSheet trace={data} nodeId={nodeId} />;
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
