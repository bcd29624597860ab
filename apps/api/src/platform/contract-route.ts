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

/** Binds a method of a controller to its contract: path, verb, roles, input and reply. */
export const Route = (contract: RouteShape) =>
  applyDecorators(
    SetMetadata(key, contract),
    verbs[contract.method](contract.path),
    HttpCode(200),
    ...(isStream(contract.returns) ? [Header('content-type', contract.returns.stream)] : [UseInterceptors(ReplyByContract)]),
  );

/** Marks a handler that anyone may call and that has no contract: what watches the process, and what describes the API. */
export const WithoutContract = () => SetMetadata(openKey, true);

export const isWithoutContract = (handler: object): boolean => Reflect.hasMetadata(openKey, handler);

/** The contract of a handler, if it has one. */
export const contractOfHandler = (handler: object): RouteShape | undefined => Reflect.getMetadata(key, handler) as RouteShape | undefined;

/** The contract of the route being called, or undefined for a handler without one. */
export const contractOf = (context: ExecutionContext): RouteShape | undefined => contractOfHandler(context.getHandler());

/** Path, query and body in one object, parsed by the contract. Throws the problem `invalid-input` with every field's fault. */
export const Input = createParamDecorator((_: unknown, context: ExecutionContext) => {
  const contract = contractOf(context);
  if (!contract) throw new Error('A route without a contract has no input');
  return readInput(contract, context.switchToHttp().getRequest<FastifyRequest>());
});

/** Sends what the contract promises and nothing else; a reply that breaks it is our own fault. */
class ReplyByContract implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const contract = contractOf(context);
    if (!contract || isStream(contract.returns)) return next.handle();
    const { returns } = contract;
    return next.handle().pipe(map((reply) => returns.parse(reply)));
  }
}
