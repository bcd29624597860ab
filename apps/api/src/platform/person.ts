import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { SignedIn as Session } from '@larderbook/contracts';
import type { FastifyRequest } from 'fastify';

/** The person signed in, the establishment they work in, and the device they work on. */
export type Person = Session & { station: string };

const people = new WeakMap<FastifyRequest['raw'], Person>();

/** Set by the guard once it knows who is asking. */
export const setPerson = (request: FastifyRequest, person: Person): void => void people.set(request.raw, person);

export const SignedIn = createParamDecorator((_: unknown, context: ExecutionContext): Person => {
  const person = people.get(context.switchToHttp().getRequest<FastifyRequest>().raw);
  if (!person) throw new Error('This route is open to anyone: nobody is signed in');
  return person;
});
