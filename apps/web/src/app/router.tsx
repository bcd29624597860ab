import { createRouter } from '@tanstack/react-router';
import { FailedPage } from './failed-page';
import { NoSuchPage } from '../ui/no-such-page';
import { routes } from './routes';

export const router = createRouter({
  routeTree: routes,
  defaultErrorComponent: FailedPage,
  defaultNotFoundComponent: () => <NoSuchPage />,
  defaultPreload: 'intent',
  scrollRestoration: true,
});

declare module '@tanstack/react-router' {
  // oxlint-disable-next-line typescript/consistent-type-definitions -- only an interface can be added to
  interface Register {
    router: typeof router;
  }
}
