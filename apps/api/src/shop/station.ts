import type { FastifyRequest } from 'fastify';

/** At most forty printable characters, or nothing. Percent-encoded, because a header carries no umlauts. */
export function stationOf({ headers }: Pick<FastifyRequest, 'headers'>): string {
  const said = headers['x-station'];
  if (typeof said !== 'string') return '';
  const station = decoded(said).trim();
  return /^[^\p{C}]{1,40}$/u.test(station) ? station : '';
}

function decoded(said: string): string {
  try {
    return decodeURIComponent(said);
  } catch {
    return ''; // a name that was not encoded whole is no name
  }
}
