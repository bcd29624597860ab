import { dehydrate, hydrate, type DehydratedState, type QueryClient } from '@tanstack/react-query';
import { remembered } from '../api/session';

const shelf = 'answers';
const place = '/kept-answers';
const onceQuietMs = 500;

type Kept = { personId: string; state: DehydratedState };

/**
 * Keeps what was last seen on this device, so that a tablet restarted in the walk-in still shows the day. Only for the
 * person who saw it; gone with signing out. Browsers have this store on https and on the machine itself only, as they
 * have the service worker that keeps the pages.
 */
export async function keepAnswers(queries: QueryClient): Promise<void> {
  if (typeof caches === 'undefined') return;
  await bringBack(queries).catch(() => undefined); // nothing kept, or kept by a version that wrote it otherwise
  let timer: ReturnType<typeof setTimeout> | undefined;
  queries.getQueryCache().subscribe(() => {
    timer ??= setTimeout(() => {
      timer = undefined;
      void putAway(queries).catch(() => undefined); // the device is full: the page works all the same
    }, onceQuietMs);
  });
}

async function bringBack(queries: QueryClient): Promise<void> {
  const kept = (await (await (await caches.open(shelf)).match(place))?.json()) as Kept | undefined;
  if (!kept || kept.personId !== remembered()?.personId) return;
  hydrate(queries, kept.state);
  void queries.invalidateQueries({ refetchType: 'none' }); // however new, it is asked for again where there is a network
}

async function putAway(queries: QueryClient): Promise<void> {
  const personId = remembered()?.personId;
  if (!personId) return void (await caches.delete(shelf));
  const state = dehydrate(queries, {
    shouldDehydrateMutation: () => false,
    shouldDehydrateQuery: ({ state: { data }, queryKey: [route] }) => data !== undefined && route !== '/session',
  });
  const kept: Kept = { personId, state };
  await (await caches.open(shelf)).put(place, new Response(JSON.stringify(kept)));
}
