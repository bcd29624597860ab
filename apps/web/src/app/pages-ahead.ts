import type { AnyRouter } from '@tanstack/react-router';
import { languageHere } from '../api/language';
import { wordsOnce } from '../ui/voice';
import { SignOutDialog } from './person-slot';
import { wordsOfPages } from './routes';

const delayMs = 3_000;

/**
 * Lets pages also open where there is no signal. The service worker keeps them over a restart, but browsers allow it on
 * https and on the machine itself only.
 */
export function fetchPagesAhead(router: AnyRouter): void {
  if (import.meta.env.PROD) void navigator.serviceWorker?.register('/service-worker.js');
  setTimeout(() => {
    for (const route of Object.values(router.routesById)) void route.options.component?.preload?.();
    void SignOutDialog.preload?.();
    for (const place of wordsOfPages) wordsOnce(place, languageHere()).catch(() => undefined); // no network: fetched when a page needs it
  }, delayMs);
}
