import type { FastifyRequest } from 'fastify';

/** The device as it names itself: at most forty printable characters, or nothing. */
export function stationOf({ headers }: Pick<FastifyRequest, 'headers'>): string {
  const said = headers['x-station'];
  return typeof said === 'string' && /^[^\p{C}]{1,40}$/u.test(said.trim()) ? said.trim() : '';
}
