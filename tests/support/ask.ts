import { requestOf, type InputOf, type RouteShape } from '@larderbook/contracts';
import type { Response } from 'supertest';
import type { Device } from './device';

/** Calls a route by its contract, from a device that is signed in. */
export function ask<R extends RouteShape>(device: Device, route: R, input: InputOf<R>): Promise<Response> {
  const { method, path, body } = requestOf(route, input);
  switch (method) {
    case 'GET':
      return device.get(path);
    case 'PUT':
      return device.put(path, body ?? {});
    case 'POST':
      return device.post(path, body);
    case 'DELETE':
      return device.delete(path);
  }
}

type Answered = { status: number; body: { code?: string; detail?: string } };

/** What a request was answered with, shortly: its status and the code of a problem, as in `[409, 'still-in-use']`. */
export const code = ({ status, body }: Answered) => [status, body.code];

/** The same, with what it says of the case. */
export const said = ({ status, body }: Answered) => [status, body.code, body.detail];
