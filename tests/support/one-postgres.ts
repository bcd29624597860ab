import { randomBytes } from 'node:crypto';
import { chmodSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { bindApiRole } from '../../apps/api/src/platform/api-role';
import { embeddedBinaries, type Binaries } from '../../apps/api/src/platform/embedded-postgres/binaries';
import { makeCluster, type Cluster } from '../../apps/api/src/platform/embedded-postgres/cluster';
import { freePort, startPostmaster } from '../../apps/api/src/platform/embedded-postgres/postmaster';
import { checkReach, unprivilegedUser, type RunAs } from '../../apps/api/src/platform/embedded-postgres/unprivileged-user';
import { migrate } from '../../apps/api/src/platform/migrate';
import { projectRoot } from '../../apps/api/src/project-root';
import { templateName, urlsOf, type TestServer } from './database';

declare module 'vitest' {
  // oxlint-disable-next-line typescript/consistent-type-definitions -- only an interface can be added to
  interface ProvidedContext {
    postgres: TestServer;
  }
}

/** Nothing here has to outlive the run, so nothing waits for the disk. */
const forgetful = { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off', max_connections: '300' };

/** Starts one real PostgreSQL for the whole run and migrates a template, of which each test file gets a copy. */
export default async function onePostgres(project: TestProject): Promise<() => Promise<void>> {
  const dir = mkdtempSync(join(tmpdir(), 'larderbook-tests-'));
  chmodSync(dir, 0o711); // run by root, the database belongs to another user
  const password = randomBytes(12).toString('hex');
  const cluster = await makeTestCluster(join(dir, 'postgres'), password);
  const postmaster = await startPostmaster(cluster, forgetful, await freePort());

  const server: TestServer = { port: postmaster.port, password };
  const template = urlsOf(server, templateName);
  await migrate(template.ownerUrl, join(projectRoot, 'prisma'));
  await bindApiRole(template);
  project.provide('postgres', server);

  return async () => {
    await postmaster.stop();
    rmSync(dir, { recursive: true, force: true });
  };
}

async function makeTestCluster(folder: string, password: string): Promise<Cluster> {
  const as = unprivilegedUser(folder);
  const { binaries, locale } = await binariesFor(as, folder);
  const cluster = { folder, binaries, as };
  await makeCluster(
    cluster,
    [
      `CREATE ROLE larderbook_owner LOGIN CREATEROLE CREATEDB PASSWORD '${password}';`,
      `CREATE ROLE larderbook LOGIN PASSWORD '${password}';`,
      `CREATE DATABASE ${templateName} OWNER larderbook_owner;`,
    ],
    { locale },
  );
  return cluster;
}

/** The PostgreSQL of TEST_POSTGRES_BIN if given; the embedded one; or, where its user cannot reach that, the system's own. */
async function binariesFor(as: RunAs, folder: string): Promise<{ binaries: Binaries; locale?: string[] }> {
  const given = process.env.TEST_POSTGRES_BIN;
  if (given) return systemBinaries([given]);
  const binaries = await embeddedBinaries();
  try {
    checkReach(as, binaries, folder);
    return { binaries };
  } catch (unreachable) {
    return systemBinaries((process.env.PATH ?? '').split(delimiter), unreachable);
  }
}

function systemBinaries(folders: string[], otherwise?: unknown): { binaries: Binaries; locale: string[] } {
  const bin = folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres')));
  if (!bin) throw otherwise ?? new Error(`There is no initdb and postgres in ${folders.join(', ')}`);
  return { binaries: { initdb: join(bin, 'initdb'), postgres: join(bin, 'postgres') }, locale: ['--locale', 'C.UTF-8'] };
}
