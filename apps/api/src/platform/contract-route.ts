import {
  applyDecorators,
  createParamDecorator,
  Delete,
  Get,
  Header,
  HttpCode,
  Post,
  Put,
  SetMetadata,
  UseInterceptors,
  type CallHandler,
  type ExecutionContext,
  type NestInterceptor,
} from '@nestjs/common';
import { isStream, type RouteShape } from '@larderbook/contracts';
import type { FastifyRequest } from 'fastify';
import { map, type Observable } from 'rxjs';
import { readInput } from './read-input';

const key = 'larderbook:route';
const openKey = 'larderbook:without-contract';
const verbs = { GET: Get, PUT: Put, POST: Post, DELETE: Delete };

export const Route = (contract: RouteShape) =>
  applyDecorators(
    SetMetadata(key, contract),
    verbs[contract.method](contract.path),
    HttpCode(200),
    ...(isStream(contract.returns) ? [Header('content-type', contract.returns.stream)] : [UseInterceptors(ReplyByContract)]),
  );

/** Anyone may call the handler. */
export const WithoutContract = () => SetMetadata(openKey, true);

export const isWithoutContract = (handler: object): boolean => Reflect.hasMetadata(openKey, handler);

export const contractOfHandler = (handler: object): RouteShape | undefined => Reflect.getMetadata(key, handler) as RouteShape | undefined;

export const contractOf = (context: ExecutionContext): RouteShape | undefined => contractOfHandler(context.getHandler());

/** Merges path, query and body. Throws `invalid-input` with the fault of every field. */
export const Input = createParamDecorator((_: unknown, context: ExecutionContext) => {
  const contract = contractOf(context);
  if (!contract) throw new Error('A route without a contract has no input');
  return readInput(contract, context.switchToHttp().getRequest<FastifyRequest>());
});

/** A reply that breaks its contract is our own fault and fails. */
class ReplyByContract implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const contract = contractOf(context);
    if (!contract || isStream(contract.returns)) return next.handle();
    const { returns } = contract;
    return next.handle().pipe(map((reply) => returns.parse(reply)));
  }
}
