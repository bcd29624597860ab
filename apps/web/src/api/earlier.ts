import type { InputOf, ReplyOf, RouteShape } from '@larderbook/contracts';
import { infiniteQueryOptions, useInfiniteQuery, useQueryClient, type InfiniteData } from '@tanstack/react-query';
import { ask } from './ask';
import { call } from './client';

/** A list whose newest come first, and whose earlier ones are asked for. */
type Listing = RouteShape & { method: 'GET' };
type Reading<R extends Listing, Row> = {
  rowsOf: (reply: ReplyOf<R>) => readonly Row[];
  idOf: (row: Row) => string;
  /** The moment by which the list is ordered. */
  at: (row: Row) => string;
};

/** All that was asked for is asked for again together, so that no part of the list is older than another. */
export const earlier = <R extends Listing, Row>(route: R, input: Omit<InputOf<R>, 'before'>, { rowsOf, at }: Reading<R, Row>) =>
  infiniteQueryOptions({
    queryKey: [route.path, 'earlier', input],
    queryFn: ({ signal, pageParam }) => call(route, { ...input, before: pageParam } as unknown as InputOf<R>, signal),
    initialPageParam: undefined as string | undefined,
    getNextPageParam: (reply) => {
      const last = rowsOf(reply).at(-1);
      return 'more' in (reply as object) && (reply as { more: boolean }).more && last !== undefined ? at(last) : undefined;
    },
  });

/** One that stands on two pages is told once. */
export function onceEach<R extends Listing, Row>({ pages }: InfiniteData<ReplyOf<R>>, { rowsOf, idOf }: Reading<R, Row>): Row[] {
  return [...new Map(pages.flatMap((page) => rowsOf(page)).map((row) => [idOf(row), row])).values()];
}

export function useEarlier<R extends Listing, Row>(route: R, input: Omit<InputOf<R>, 'before'>, reading: Reading<R, Row>) {
  const queries = useQueryClient();
  const first = ask(route, input as unknown as InputOf<R>).queryKey; // what another page asked for shows without a connection
  const { data, error, refetch, hasNextPage, isFetchingNextPage, fetchNextPage } = useInfiniteQuery({
    ...earlier(route, input, reading),
    initialData: () => {
      const page = queries.getQueryData<ReplyOf<R>>(first);
      return page === undefined ? undefined : { pages: [page], pageParams: [undefined] };
    },
    initialDataUpdatedAt: () => queries.getQueryState(first)?.dataUpdatedAt,
  });
  return {
    rows: data && onceEach<R, Row>(data, reading),
    error,
    refetch,
    isFetching: isFetchingNextPage,
    /** Undefined when there are none. */
    more: hasNextPage ? () => void fetchNextPage() : undefined,
  };
}
