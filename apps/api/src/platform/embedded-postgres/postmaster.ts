import { spawn, type ChildProcess } from 'node:child_process';
import { closeSync, existsSync, openSync, readFileSync, renameSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { CannotStart } from '../cannot-start';
import { complaint, plainEnvironment, type Cluster } from './cluster';

export type Postmaster = { port: number; ended: Promise<void>; stop(): Promise<void> };

/** Every commit is on disk before it is answered. Memory is small: the machine has other work. */
export const durable = { fsync: 'on', synchronous_commit: 'on', full_page_writes: 'on', shared_buffers: '128MB', max_connections: '60' };

/** Data that is deleted at the end need not reach the disk. */
export const thrownAway = { ...durable, fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off' };

const always = {
  listen_addresses: '127.0.0.1',
  unix_socket_directories: '',
  timezone: 'UTC',
  log_timezone: 'UTC',
  log_min_messages: 'warning',
  jit: 'off', // compiling a query takes longer than running any of ours
};

/** Includes recovery after a power failure. Its own process group keeps Ctrl-C from it, so Larderbook stops it last. */
export async function startPostmaster(
  cluster: Cluster,
  settings: Record<string, string>,
  port: number,
  signal?: AbortSignal,
): Promise<Postmaster> {
  const child = launch(cluster, { ...always, ...settings, port: String(port) });
  const ended = new Promise<void>((done) => child.once('close', () => done()).once('error', () => done()));
  try {
    await untilReady(cluster, child, signal);
  } catch (failure) {
    await stop(child, ended);
    throw failure;
  }
  return { port, ended, stop: () => stop(child, ended) };
}

function launch({ folder, binaries, as }: Cluster, settings: Record<string, string>): ChildProcess {
  const log = logOf(folder);
  if (existsSync(log)) renameSync(log, `${log}.before`);
  const out = openSync(log, 'w', 0o600);
  const flags = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`]);
  const child = spawn(binaries.postgres, ['-D', folder, ...flags], {
    ...as,
    cwd: folder,
    env: plainEnvironment(),
    detached: true,
    windowsHide: true,
    stdio: ['ignore', out, out], // PostgreSQL outlives a killed Larderbook, and a pipe would not
  });
  closeSync(out);
  return child;
}

/** Line eight of postmaster.pid turns to "ready" once connections are accepted. */
async function untilReady({ folder }: Cluster, child: ChildProcess, signal?: AbortSignal): Promise<void> {
  let failure: Error | undefined;
  child.once('error', (error) => (failure = error));
  while (!isReady(folder, child.pid)) {
    if (failure || child.exitCode !== null || child.signalCode !== null) {
      const why = complaint(readFileSync(logOf(folder), 'utf8')) ?? failure?.message ?? 'it ended without a word';
      throw new CannotStart(`The database could not start: ${why} (its log is ${logOf(folder)}).`, { cause: failure });
    }
    await wait(10, undefined, { signal });
  }
}

function isReady(folder: string, pid: number | undefined): boolean {
  const file = join(folder, 'postmaster.pid');
  const lines = existsSync(file) ? readFileSync(file, 'utf8').split('\n') : [];
  return Number(lines[0]) === pid && lines[7]?.trim() === 'ready';
}

/** SIGINT is PostgreSQL's fast shutdown: open transactions are rolled back. */
async function stop(child: ChildProcess, ended: Promise<void>): Promise<void> {
  if (child.exitCode === null && child.signalCode === null) child.kill('SIGINT');
  await ended;
}

export function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const probe = createServer().once('error', fail);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => (typeof address === 'object' && address ? done(address.port) : fail(new Error('No port is free'))));
    });
  });
}

const logOf = (folder: string) => `${folder}.log`;
