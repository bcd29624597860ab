import { QueryClient } from '@tanstack/react-query';
import { ApiProblem } from '../api/api-problem';

const aDay = 24 * 3_600_000;

/**
 * What was last seen stays for the day, also when no newer answer comes. Requests ignore the browser's view of the
 * network: the server often runs on the same machine or wire.
 */
export const queries = new QueryClient({
  defaultOptions: {
    queries: {
      networkMode: 'always',
      staleTime: 5_000,
      gcTime: aDay,
      retry: (failures, error) => !(error instanceof ApiProblem && error.status < 500) && failures < 2,
    },
    mutations: { networkMode: 'always', retry: false },
  },
});
