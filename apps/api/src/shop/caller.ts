import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Caller } from './sign-in';

/** Where a request comes from: its address, and the browser it names. */
export const callerOf = (request: FastifyRequest): Caller => ({
  address: request.ip,
  headers: new Headers({
    'user-agent': request.headers['user-agent'] ?? '',
    'x-forwarded-for': request.ip,
    cookie: request.headers.cookie ?? '',
  }),
});

/** Hands cookies to the browser; over https they are kept from ever being sent without it. */
export function setCookies(cookies: string[], request: FastifyRequest, reply: FastifyReply): void {
  const isSecure = request.protocol === 'https' || request.headers.origin?.startsWith('https://');
  void reply.header('set-cookie', isSecure ? cookies.map((cookie) => `${cookie}; Secure`) : cookies);
}
