import { dehydrate, hydrate, type DehydratedState, type QueryClient } from '@tanstack/react-query';
import { isShownHere, remembered } from '../api/session';

const cacheName = 'answers';
const address = '/kept-answers';
const debounceMs = 500;

type Kept = { personId: string; state: DehydratedState };

/**
 * A tablet restarted without a signal still shows the day. Only for the person who saw it; gone with signing out.
 * Browsers have this store on https and on the machine itself only, like the service worker.
 */
export async function keepAnswers(queries: QueryClient): Promise<void> {
  if (typeof caches === 'undefined') return;
  await restore(queries).catch(() => undefined); // nothing kept, or kept by a version that wrote it otherwise
  let timer: ReturnType<typeof setTimeout> | undefined;
  queries.getQueryCache().subscribe(() => {
    timer ??= setTimeout(() => {
      timer = undefined;
      void persist(queries).catch(() => undefined); // the device is full: the page works all the same
    }, debounceMs);
  });
}

async function restore(queries: QueryClient): Promise<void> {
  const kept = (await (await (await caches.open(cacheName)).match(address))?.json()) as Kept | undefined;
  if (!kept || kept.personId !== remembered()?.personId) return;
  hydrate(queries, kept.state);
  void queries.invalidateQueries({ refetchType: 'none' }); // however new, it is asked for again where there is a network
}

export async function persist(queries: QueryClient): Promise<void> {
  const personId = remembered()?.personId;
  if (!personId) return void (await caches.delete(cacheName));
  if (!isShownHere(queries)) return; // another person signed in in another tab: theirs stays
  const state = dehydrate(queries, {
    shouldDehydrateMutation: () => false,
    shouldDehydrateQuery: ({ state: { data }, queryKey: [route] }) => data !== undefined && route !== '/session',
  });
  const kept: Kept = { personId, state };
  await (await caches.open(cacheName)).put(address, new Response(JSON.stringify(kept)));
}
