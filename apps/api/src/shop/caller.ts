import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Caller } from './sign-in';

export const callerOf = (request: FastifyRequest): Caller => ({
  address: request.ip,
  headers: new Headers({
    'user-agent': request.headers['user-agent'] ?? '',
    'x-forwarded-for': request.ip,
    cookie: request.headers.cookie ?? '',
  }),
});

/** Secure cookies are never sent over plain http. */
export function setCookies(cookies: string[], request: FastifyRequest, reply: FastifyReply): void {
  const isSecure = request.protocol === 'https' || request.headers.origin?.startsWith('https://');
  void reply.header('set-cookie', isSecure ? cookies.map((cookie) => `${cookie}; Secure`) : cookies);
}
