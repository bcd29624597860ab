import { randomUUID } from 'node:crypto';
import { Catch, HttpException, Logger, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { ProblemBody } from '@larderbook/contracts';
import type { Voice } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Problem } from './problem';
import { told } from './told';
import { voiceOf } from './voice';

/** An unexpected failure is logged under a reference number. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly log = new Logger('problem');

  catch(failure: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const reply = http.getResponse<FastifyReply>();
    const body = (asProblem(failure) ?? this.unexpected(failure)).body(request.url, voiceOf(request));
    void reply.status(body.status).type('application/problem+json').send(body);
  }

  private unexpected(failure: unknown): { body(instance: string, voice: Voice): ProblemBody } {
    const reference = randomUUID();
    this.log.error({ reference, failure: failure instanceof Error ? (failure.stack ?? failure.message) : failure });
    return {
      body: (instance, { language }) => ({
        type: 'about:blank',
        code: 'unexpected',
        status: 500,
        title: allWords.problems[language].unexpected,
        detail: reference,
        instance,
      }),
    };
  }
}

/** Fastify and Nest refuse some requests themselves. */
function asProblem(failure: unknown): Problem | undefined {
  if (failure instanceof Problem) return failure;
  const status = statusOf(failure);
  if (status === 404) return new Problem('not-found');
  if (status === 413) return new Problem('body-too-large');
  if (status === 415) return new Problem('unsupported-media-type');
  if (status !== undefined && status >= 400 && status < 500)
    return new Problem('invalid-input', told('not-readable', { said: failure instanceof Error ? failure.message : '' }));
  return undefined;
}

function statusOf(failure: unknown): number | undefined {
  if (failure instanceof HttpException) return failure.getStatus();
  if (failure instanceof Error && 'statusCode' in failure && typeof failure.statusCode === 'number') return failure.statusCode;
  return undefined;
}
