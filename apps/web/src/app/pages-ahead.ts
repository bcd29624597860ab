import type { AnyRouter } from '@tanstack/react-router';

const onceQuietMs = 3_000;

/**
 * Fetches every page a little after the first one is shown, so that the next also opens where there is no signal. The
 * service worker keeps them over a restart too, but browsers allow it on https and on the machine itself only.
 */
export function fetchPagesAhead(router: AnyRouter): void {
  if (import.meta.env.PROD) void navigator.serviceWorker?.register('/service-worker.js');
  setTimeout(() => {
    for (const route of Object.values(router.routesById)) void route.options.component?.preload?.();
  }, onceQuietMs);
}
