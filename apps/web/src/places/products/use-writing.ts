import type { InputOf, RouteShape } from '@larderbook/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../api/client';

/** Writes one record straight to the book and has every page read it again. Planning can wait for a connection. */
export function useWriting<R extends RouteShape>(route: R) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (input: InputOf<R>) => call(route, input),
    onSuccess: () => queries.invalidateQueries(),
  });
}
