import { lazyRouteComponent } from '@tanstack/react-router';

/** What the book's spine opens: not needed for the first page, fetched a little after it with all pages. */
export const SignOutDialog = lazyRouteComponent(() => import('./sign-out-dialog'), 'SignOutDialog');
export const OutboxDialog = lazyRouteComponent(() => import('./outbox-dialog'), 'OutboxDialog');
