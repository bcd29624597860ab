import * as contracts from '@larderbook/contracts';
import type { RouteShape } from '@larderbook/contracts';

type Contracts = typeof contracts;
export type RouteName = { [N in keyof Contracts]: Contracts[N] extends RouteShape ? N : never }[keyof Contracts];

const isRoute = (one: unknown): one is RouteShape => typeof one === 'object' && one !== null && 'problems' in one && 'path' in one;

/** Every route of the contracts, by the name under which it is exported. */
export const routes = Object.entries(contracts).flatMap(([name, route]) =>
  isRoute(route) ? [{ name: name as RouteName, route: route as RouteShape }] : [],
);
