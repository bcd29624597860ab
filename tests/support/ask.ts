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
