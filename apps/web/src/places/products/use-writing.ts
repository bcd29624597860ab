import type { InputOf, RouteShape } from '@larderbook/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../api/client';
import { refreshAfter } from '../../api/refresh-after';

/** Planning can wait for a connection: nothing goes through the outbox. Every page reads again after it. */
export function useWriting<R extends RouteShape>(route: R) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (input: InputOf<R>) => call(route, input),
    onSuccess: () => refreshAfter(queries, route.path),
  });
}
