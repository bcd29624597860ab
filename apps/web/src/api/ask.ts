import type { InputOf, ReplyOf, RouteShape } from '@larderbook/contracts';
import { queryOptions } from '@tanstack/react-query';
import { call } from './client';

/** `useQuery(ask(showLot, { lotId }))`. */
export const ask = <R extends RouteShape & { method: 'GET' }>(route: R, input: InputOf<R>) =>
  queryOptions<ReplyOf<R>>({
    queryKey: [route.path, input],
    queryFn: ({ signal }) => call(route, input, signal),
  });

/** Every answer of a route: `invalidateQueries({ queryKey: allOf(listLots) })`. */
export const allOf = (route: RouteShape) => [route.path];
