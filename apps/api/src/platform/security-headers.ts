import type { FastifyInstance } from 'fastify';

const policy = [
  "default-src 'self'",
  "base-uri 'none'",
  "object-src 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
  "img-src 'self' data: blob:",
].join('; ');

export function securityHeaders(server: FastifyInstance): void {
  server.addHook('onRequest', async (request, reply) => {
    if (request.url.startsWith('/api')) reply.header('cache-control', 'no-store'); // a shared tablet must not cache records
    reply.headers({
      'content-security-policy': policy,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
    });
  });
}
