import { pathNames, type RouteShape } from './route';

/** `path` is under `/api/v1` and holds the query. */
export type ApiRequest = { method: RouteShape['method']; path: string; body?: Record<string, unknown> };

export function requestOf(route: RouteShape, input: object): ApiRequest {
  const inPath = pathNames(route.path);
  const inQuery = Object.keys(route.query?.shape ?? {});
  const given = Object.entries(input).filter(([, value]) => value !== undefined);
  const named = new Map<string, unknown>(given);
  const text = (name: string) => encodeURIComponent(String(named.get(name) ?? ''));

  const path = route.path.replace(/:(\w+)/g, (_whole, name: string) => text(name));
  const query = inQuery.filter((name) => named.has(name)).map((name) => `${name}=${text(name)}`);
  const rest = given.filter(([name]) => !inPath.includes(name) && !inQuery.includes(name));
  return {
    method: route.method,
    path: query.length > 0 ? `${path}?${query.join('&')}` : path,
    ...(route.body && { body: Object.fromEntries(rest) }),
  };
}
