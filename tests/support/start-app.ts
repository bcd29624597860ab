import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { createApp } from '../../apps/api/src/create-app';
import { cloneDatabase, type TestDatabase } from './database';
import { FixedClock } from './fixed-clock';

export type TestApp = {
  app: NestFastifyApplication;
  /** For fetch; for supertest give it `app.getHttpServer()`. */
  url: string;
  database: TestDatabase;
  clock: FixedClock;
  close(): Promise<void>;
};

/** The real application on a database of its own, listening on a port of its own; its clock stands at `now`. */
export async function startApp(now = new Date('2026-03-02T08:00:00Z')): Promise<TestApp> {
  const database = await cloneDatabase();
  const clock = new FixedClock(now);
  const app = await appOn(database, clock);
  await app.listen(0, '127.0.0.1');
  const close = async () => {
    await app.close();
    await database.drop();
  };
  return { app, url: await app.getUrl(), database, clock, close };
}

/** One more process of the same Larderbook, as it were: another application on a database that is already open. */
export const appOn = ({ apiUrl }: TestDatabase, clock: FixedClock): Promise<NestFastifyApplication> =>
  createApp({ url: apiUrl, secret: 'a secret that is for tests alone', clock }, 'silent');
