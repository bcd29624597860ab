import { createHmac } from 'node:crypto';
import { join } from 'node:path';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { bindApiRole } from './platform/api-role';
import type { Clock } from './platform/clock';
import { checkAddress, closeDoor, listen } from './platform/listen';
import { CannotStart } from './platform/cannot-start';
import { openEmbeddedPostgres, type DatabaseUrls, type OpenDatabase } from './platform/embedded-postgres';
import { migrate } from './platform/migrate';
import { projectRoot } from './project-root';
import type { Settings } from './settings';

export type Larderbook = { url: string; app: NestFastifyApplication; database: DatabaseUrls; close(): Promise<void> };

/** Throws CannotStart with one sentence. On failure or abort, everything started is stopped again. */
export async function startLarderbook(settings: Settings, signal?: AbortSignal, clock?: Clock): Promise<Larderbook> {
  const opened: Closing[] = [];
  const close = () => closeAll(opened);
  try {
    await checkAddress(settings);
    const database = await openDatabase(settings, signal);
    opened.push(database.close);
    await migrate(database.ownerUrl, join(projectRoot, 'prisma'));
    await bindApiRole(database);
    signal?.throwIfAborted();
    const { createApp } = await import('./create-app'); // a refused start does not need this, which is most of the code
    const app = await createApp({ url: database.apiUrl, secret: sessionSecret(settings, database), clock }, settings.logLevel);
    opened.push(() => closeDoor(app));
    return { url: await listen(app, settings), app, database, close };
  } catch (failure) {
    await close();
    throw failure;
  }
}

type Closing = () => Promise<void>;

/** Closes in reverse order; one failure does not keep the others open. */
async function closeAll(opened: Closing[]): Promise<void> {
  const last = opened.pop();
  if (last) await last().finally(() => closeAll(opened));
}

async function openDatabase(settings: Settings, signal?: AbortSignal): Promise<OpenDatabase> {
  return settings.database
    ? { ...settings.database, close: async () => {} }
    : openEmbeddedPostgres(settings.dataDir, signal, !settings.throwsAway);
}

/** The same in every process on one database, which does not hold it. */
function sessionSecret({ sessionSecret }: Settings, { ownerUrl }: DatabaseUrls): string {
  if (sessionSecret) return sessionSecret;
  const { password } = new URL(ownerUrl);
  if (!password) throw new CannotStart('DATABASE_OWNER_URL has no password from which to derive one for sessions: set SESSION_SECRET.');
  return createHmac('sha256', password).update('larderbook session cookies').digest('hex');
}
