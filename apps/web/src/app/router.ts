import { createRouter } from '@tanstack/react-router';
import { routes } from './routes';

export const router = createRouter({ routeTree: routes, defaultPreload: 'intent', scrollRestoration: true });
