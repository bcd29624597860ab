import type { InputOf, RouteShape } from '@larderbook/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../api/client';

/** Planning can wait for a connection: nothing goes through the outbox. Every page reads again after it. */
export function useWriting<R extends RouteShape>(route: R) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (input: InputOf<R>) => call(route, input),
    onSuccess: () => queries.invalidateQueries(),
  });
}
