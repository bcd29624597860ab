import { isStream, requestOf, type InputOf, type ReplyOf, type RouteShape } from '@larderbook/contracts';
import type { z } from 'zod';
import { base, exchange } from './exchange';

/**
 * Throws ApiProblem when the API says no and NoConnection when it cannot be reached. Records made on the floor go
 * through the outbox instead.
 */
export async function call<R extends RouteShape>(route: R, input: InputOf<R>, signal?: AbortSignal): Promise<ReplyOf<R>> {
  return replyOf(route, await exchange(requestOf(route, input), signal));
}

export function replyOf<R extends RouteShape>(route: R, json: unknown): ReplyOf<R> {
  if (isStream(route.returns)) throw new Error(`${route.path} is a file: link to it with hrefOf`);
  const returns: z.ZodType = route.returns;
  return returns.parse(json) as ReplyOf<R>;
}

export const hrefOf = <R extends RouteShape>(route: R, input: InputOf<R>): string => base + requestOf(route, input).path;
