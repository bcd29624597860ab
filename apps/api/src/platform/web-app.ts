import { existsSync } from 'node:fs';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

const aYear = 'public, max-age=31536000, immutable';

/**
 * Serves the built pages, when there are any. Files below /assets carry a hash in their name and are kept for a year; all
 * others are asked for again. An address that only the pages know (/lots/…) gets index.html.
 */
export async function serveWebApp(server: FastifyInstance, folder: string): Promise<void> {
  if (!existsSync(folder)) return;
  await server.register(fastifyStatic, {
    root: folder,
    wildcard: false, // only files that were there at the start, never a path made up by the caller
    preCompressed: true,
    cacheControl: false,
    setHeaders: (reply, path) => void reply.header('cache-control', path.includes('/assets/') ? aYear : 'no-cache'),
  });
  server.get('/*', (request, reply) => {
    const wantsPage = !/^\/(api|health|ready)(\/|$)/.test(request.url) && request.headers.accept?.includes('text/html');
    return wantsPage ? reply.sendFile('index.html') : reply.callNotFound();
  });
}
