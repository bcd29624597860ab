import { showReview } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { ask } from '../../api/ask';
import { Loading } from '../../ui/loading';
import { PageProblem } from '../../ui/page-problem';
import { ReviewView } from './review-view';

/** The pre-shipment review of one lot (9 CFR 417.5(c)). */
export function ReviewPage(): ReactNode {
  const { lotId } = useParams({ from: '/lots/$lotId/review' });
  const { data, error, refetch } = useQuery(ask(showReview, { lotId }));
  if (data) return <ReviewView key={lotId} review={data} />;
  return error ? <PageProblem error={error} onRetry={() => void refetch()} /> : <Loading />;
}
