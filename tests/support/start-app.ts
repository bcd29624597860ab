import { Test } from '@nestjs/testing';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from '../../apps/api/src/app.module';
import { dressed, fastify } from '../../apps/api/src/create-app';
import { Clock } from '../../apps/api/src/platform/clock';
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
  const app = await appOn(database, new FixedClock(now));
  await app.listen(0, '127.0.0.1');
  const close = async () => {
    await app.close();
    await database.drop();
  };
  return { app, url: await app.getUrl(), database, clock: app.get<FixedClock>(Clock), close };
}

/** One more process of the same Larderbook, as it were: another application on a database that is already open. */
export async function appOn({ apiUrl }: TestDatabase, clock: FixedClock): Promise<NestFastifyApplication> {
  const module = await Test.createTestingModule({ imports: [AppModule.on({ url: apiUrl, secret: 'a secret for tests alone, 32 long' })] })
    .overrideProvider(Clock)
    .useValue(clock)
    .compile();
  return dressed(module.createNestApplication<NestFastifyApplication>(fastify(), { bodyParser: false, logger: false }));
}
