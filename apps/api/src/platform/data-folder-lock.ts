import { randomUUID } from 'node:crypto';
import { existsSync, linkSync, readFileSync, readlinkSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { CannotStart } from './cannot-start';
import { bornAt } from './running-process';

type Holder = { pid: number; born: string | undefined; machine: string; token: string };
export type DataFolderLock = { release(): void };

const heartbeat = 2_000;
const silence = 3 * heartbeat;
/** A lock that a power failure cut short reads as this. */
const nobody: Holder = { pid: 0, born: 'never', machine: machine(), token: '' };

/**
 * Throws CannotStart when another Larderbook uses the folder. A lock of a killed process is taken over at once; one of
 * another machine or container after six seconds without a heartbeat.
 */
export async function lockDataFolder(dataDir: string): Promise<DataFolderLock> {
  const path = join(dataDir, 'larderbook.lock');
  const mine: Holder = { pid: process.pid, born: bornAt(process.pid), machine: machine(), token: randomUUID() };

  while (!create(path, mine)) {
    const other = read(path);
    if (other && (await isHeld(path, other))) {
      throw new CannotStart(
        `The data folder ${dataDir} is in use by another Larderbook (process ${other.pid} on ${hostOf(other)}). ` +
          'Stop that one first, or give this one a folder of its own in DATA_DIR.',
      );
    }
    if (other) discard(path, other);
  }

  const beat = setInterval(() => touch(path), heartbeat).unref();
  return {
    release: () => {
      clearInterval(beat);
      if (read(path)?.token === mine.token) rmSync(path, { force: true });
    },
  };
}

/** Links a finished file, so that nobody reads half a lock. False when one exists. */
function create(path: string, holder: Holder): boolean {
  const draft = `${path}.${holder.token}`;
  writeFileSync(draft, JSON.stringify(holder), { mode: 0o600 });
  try {
    linkSync(draft, path);
    return true;
  } catch (failure) {
    if (isCode(failure, 'EEXIST')) return false;
    throw failure;
  } finally {
    rmSync(draft, { force: true });
  }
}

async function isHeld(path: string, holder: Holder): Promise<boolean> {
  if (holder.machine === machine()) return bornAt(holder.pid) === holder.born;
  const last = beatOf(path);
  for (let waited = 0; waited < silence; waited += 200) {
    await wait(200);
    if (beatOf(path) !== last) return true;
  }
  return false;
}

/** Puts the lock back when another process has replaced the dead one meanwhile. */
function discard(path: string, dead: Holder): void {
  const aside = `${path}.${randomUUID()}`;
  try {
    renameSync(path, aside);
    if (read(aside)?.token !== dead.token) linkSync(aside, path);
  } catch (failure) {
    if (!isCode(failure, 'ENOENT') && !isCode(failure, 'EEXIST')) throw failure;
  } finally {
    rmSync(aside, { force: true });
  }
}

function read(path: string): Holder | undefined {
  try {
    return JSON.parse(readFileSync(path, 'utf8')) as Holder;
  } catch (failure) {
    if (isCode(failure, 'ENOENT')) return undefined;
    if (failure instanceof SyntaxError) return nobody;
    throw failure;
  }
}

function touch(path: string): void {
  const now = new Date();
  if (existsSync(path)) utimesSync(path, now, now);
}

const beatOf = (path: string) => statSync(path, { throwIfNoEntry: false })?.mtimeMs;

/** A process id is unique only within one machine and, on Linux, one container. */
function machine(): string {
  return process.platform === 'linux' ? `${hostname()} ${readlinkSync('/proc/self/ns/pid')}` : hostname();
}

const hostOf = (holder: Holder) => holder.machine.split(' ')[0];
const isCode = (failure: unknown, code: string) => failure instanceof Error && 'code' in failure && failure.code === code;
