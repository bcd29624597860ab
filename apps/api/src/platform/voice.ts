import type { SignedIn } from '@larderbook/contracts';
import { languageFor, type Voice } from '@larderbook/messages';
import type { FastifyRequest } from 'fastify';
import { personOf } from './person';

/** How a request is answered: as the person asked for, else as the request does, by the clock of the shop. */
export const voiceOf = (request: FastifyRequest): Voice => personOf(request)?.voice ?? voiceFor(request);

/** The same of a person who has only just been found. */
export function voiceFor({ headers }: Pick<FastifyRequest, 'headers'>, person?: SignedIn): Voice {
  return {
    language: person?.language ?? languageFor(headers['accept-language']?.split(',') ?? []),
    timeZone: person?.establishment.timeZone ?? 'UTC',
    timeStyle: person?.establishment.paper === 'Letter' ? 'US' : 'international',
  };
}
