import { existsSync, readdirSync } from 'node:fs';
import { sep } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

const aYear = 'public, max-age=31536000, immutable';

/**
 * Serves only files that were there at the start, never a path the caller made up. Names below /assets carry a hash, so
 * they are cached for a year. Pages' addresses (/lots/…) get index.html.
 */
export async function serveWebApp(server: FastifyInstance, folder: string): Promise<void> {
  if (!existsSync(folder)) return;
  const files = filesIn(folder);
  await server.register(fastifyStatic, {
    root: folder,
    serve: false, // one route for all: a route for each of hundreds of files slows the start
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

/** Compressed copies are no files of their own; folders have no dot. */
const filesIn = (folder: string): Set<string> => {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => path.replaceAll(sep, '/'));
  return new Set(names.filter((name) => name.includes('.') && !/\.(br|gz)$/.test(name)));
};
