import type { SignedIn } from '@larderbook/contracts';
import { languageFor, type Voice } from '@larderbook/messages';
import type { FastifyRequest } from 'fastify';
import { personOf } from './person';

export const voiceOf = (request: FastifyRequest): Voice => personOf(request)?.voice ?? voiceFor(request);

export function voiceFor({ headers }: Pick<FastifyRequest, 'headers'>, person?: SignedIn): Voice {
  return {
    language: person?.language ?? languageFor(headers['accept-language']?.split(',') ?? []),
    timeZone: person?.establishment.timeZone ?? 'UTC',
    timeStyle: person?.establishment.paper === 'Letter' ? 'US' : 'international',
  };
}
