import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { SignedIn as Session } from '@larderbook/contracts';
import type { Voice } from '@larderbook/messages';
import type { FastifyRequest } from 'fastify';

export type Person = Session & { station: string; voice: Voice };

const people = new WeakMap<FastifyRequest['raw'], Person>();

export const setPerson = (request: FastifyRequest, person: Person): void => void people.set(request.raw, person);

/** Undefined until the guard has found out who asks. */
export const personOf = (request: FastifyRequest): Person | undefined => people.get(request.raw);

export const SignedIn = createParamDecorator((_: unknown, context: ExecutionContext): Person => {
  const person = personOf(context.switchToHttp().getRequest<FastifyRequest>());
  if (!person) throw new Error('This route is open to anyone: nobody is signed in');
  return person;
});
