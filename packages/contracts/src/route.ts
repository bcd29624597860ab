import type { z } from 'zod';
import type { ProblemCode } from './problems';

export const roles = ['owner', 'operator', 'reviewer', 'inspector'] as const;
export type Role = (typeof roles)[number];

/** All who are signed in may read; only the inspector may not write. */
export const everyone: readonly Role[] = roles;
export const floor: readonly Role[] = ['owner', 'operator', 'reviewer'];

type Stream = { stream: 'application/pdf' | 'application/x-ndjson' };

/**
 * The API binds a route, the web calls it, OpenAPI is generated from it. Names in the path (`:lotId`) are UUIDs. A PUT
 * names a new record by the UUIDv7 its device made.
 */
export type RouteShape = {
  method: 'GET' | 'PUT' | 'POST' | 'DELETE';
  path: `/${string}`;
  summary: string;
  roles: readonly Role[] | 'anyone';
  query?: z.ZodObject;
  body?: z.ZodType;
  returns: z.ZodType | Stream;
  problems: readonly ProblemCode[];
};

export const route = <const R extends RouteShape>(shape: R): R => shape;

type PathNames<P extends string> = P extends `${string}:${infer Name}/${infer Rest}`
  ? Name | PathNames<`/${Rest}`>
  : P extends `${string}:${infer Name}`
    ? Name
    : never;
type OutputOf<T> = T extends z.ZodType ? z.output<T> : unknown;

export type InputOf<R extends RouteShape> = { [K in PathNames<R['path']>]: string } & OutputOf<R['query']> & OutputOf<R['body']>;

export type ReplyOf<R extends RouteShape> = R['returns'] extends z.ZodType ? z.output<R['returns']> : never;

export const isStream = (returns: z.ZodType | Stream): returns is Stream => 'stream' in returns;
export const pathNames = (path: string): string[] => [...path.matchAll(/:(\w+)/g)].map((found) => found[1] ?? '');
