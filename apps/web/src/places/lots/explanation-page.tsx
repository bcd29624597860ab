import { explainPoint } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { ExplanationView } from './explanation/explanation-view';

const lookAgainMs = 30_000;

export function ExplanationPage(): ReactNode {
  const { lotId, controlPointId } = useParams({ from: '/lots/$lotId/explanations/$controlPointId' });
  const { data, error, refetch } = useQuery({
    ...ask(explainPoint, { lotId, controlPointId }),
    refetchInterval: (query) => (query.state.data?.stands === 'running' ? lookAgainMs : false),
  });
  if (data) return <ExplanationView explained={data} />;
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
