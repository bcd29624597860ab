import { existsSync, readdirSync } from 'node:fs';
import { sep } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

const aYear = 'public, max-age=31536000, immutable';

/**
 * Serves the built pages, when there are any: only files that were there at the start, never a path made up by the
 * caller. Files below /assets carry a hash in their name and are kept for a year; all others are asked for again. An
 * address that only the pages know (/lots/…) gets index.html.
 */
export async function serveWebApp(server: FastifyInstance, folder: string): Promise<void> {
  if (!existsSync(folder)) return;
  const files = filesIn(folder);
  await server.register(fastifyStatic, {
    root: folder,
    serve: false, // by one route below: a route for each of hundreds of files is most of what a start would do here
    preCompressed: true,
    cacheControl: false,
    setHeaders: (reply, path) => void reply.header('cache-control', path.includes('/assets/') ? aYear : 'no-cache'),
  });
  server.get<{ Params: { '*': string } }>('/*', (request, reply) => {
    const file = request.params['*'] || 'index.html';
    if (files.has(file)) return reply.sendFile(file);
    const wantsPage = !/^\/(api|health|ready)(\/|$)/.test(request.url) && request.headers.accept?.includes('text/html');
    return wantsPage ? reply.sendFile('index.html') : reply.callNotFound();
  });
}

/** Names below the folder, as addresses have them. What is sent compressed is no file of its own; folders have no dot. */
const filesIn = (folder: string): Set<string> => {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll(sep, '/'));
  return new Set(names.filter((name) => name.includes('.') && !/\.(br|gz)$/.test(name)));
};
