import { describedReads, isDayWrite } from '@larderbook/contracts';
import type { QueryClient } from '@tanstack/react-query';

/** Has what a write changed asked for again: all answers, but for a record of the day's work those it cannot change. */
export const refreshAfter = (queries: QueryClient, path: string): Promise<void> =>
  queries.invalidateQueries(isDayWrite(path) ? { predicate: ({ queryKey: [read] }) => !describedReads.includes(String(read)) } : {});
