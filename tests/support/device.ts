import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import request, { type Response } from 'supertest';

/** A tablet or a computer in the shop: sends what our own pages send, and keeps its session cookie. */
export type Device = {
  get(path: string): Promise<Response>;
  put(path: string, body: object): Promise<Response>;
  post(path: string, body?: object): Promise<Response>;
  delete(path: string): Promise<Response>;
  cookie(): string;
};

/** The application in this process, or the address of one that runs in another. */
export type Door = NestFastifyApplication | string;

export function aDevice(door: Door, station = 'tablet by the smoker'): Device {
  const server = typeof door === 'string' ? door : door.getHttpServer();
  let cookie = '';
  const send = async (method: 'get' | 'put' | 'post' | 'delete', path: string, body?: object): Promise<Response> => {
    const asked = request(server)[method](`/api/v1${path}`).set({ 'x-larderbook': '1', 'x-station': station, cookie });
    const reply = await (body ? asked.send(body) : asked);
    const given = ([] as string[]).concat(reply.headers['set-cookie'] ?? []);
    for (const set of given) if (set.startsWith('larderbook.session_token=')) cookie = set.split(';')[0] ?? '';
    return reply;
  };
  return {
    get: (path) => send('get', path),
    put: (path, body) => send('put', path, body),
    post: (path, body) => send('post', path, body),
    delete: (path) => send('delete', path),
    cookie: () => cookie,
  };
}
