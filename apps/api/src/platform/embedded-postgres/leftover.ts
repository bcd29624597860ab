import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { CannotStart } from '../cannot-start';
import { bornAt, commandOf } from '../running-process';

/** No process can have an id this high. */
const noProcess = 2 ** 31 - 2;
const closesWithinMs = 60_000;

/**
 * Asks the database of a killed Larderbook to close and never kills it. The caller holds the lock of the data folder.
 */
export async function closeLeftover(folder: string, signal?: AbortSignal): Promise<void> {
  const file = join(folder, 'postmaster.pid');
  if (!existsSync(file)) return;
  const pid = Number(readFileSync(file, 'utf8').split('\n')[0]);
  const born = bornAt(pid);
  if (!born || !commandOf(pid)?.includes(folder)) return disown(file);

  askToClose(pid);
  for (let waited = 0; bornAt(pid) === born; waited += 20) {
    if (waited > closesWithinMs)
      throw new CannotStart(`The database of an earlier Larderbook (process ${pid}) is still closing: try again in a minute.`);
    await wait(20, undefined, { signal });
  }
}

function askToClose(pid: number): void {
  try {
    process.kill(pid, 'SIGINT');
  } catch (failure) {
    throw new CannotStart(
      `The database of an earlier Larderbook (process ${pid}) still runs on this data folder and belongs to another user: ` +
        'start Larderbook as the user who started it before.',
      { cause: failure },
    );
  }
}

/**
 * Another program or a zombie may have the ended server's id, and PostgreSQL would refuse to start. The other lines
 * stay: by them PostgreSQL finds sessions that still live.
 */
function disown(file: string): void {
  const [, ...rest] = readFileSync(file, 'utf8').split('\n');
  writeFileSync(file, [noProcess, ...rest].join('\n'));
}
