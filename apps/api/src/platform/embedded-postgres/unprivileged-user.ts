import { execFileSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { dirname } from 'node:path';
import { CannotStart } from '../cannot-start';
import type { Binaries } from './binaries';

/** Undefined means the user who started Larderbook. */
export type RunAs = { uid: number; gid: number } | undefined;

/** PostgreSQL refuses to run as root. The owner of its folder runs it, the first time `postgres`. */
export function unprivilegedUser(folder: string): RunAs {
  if (process.getuid?.() !== 0) return undefined;
  const made = statSync(folder, { throwIfNoEntry: false });
  if (made && made.uid !== 0) return { uid: made.uid, gid: made.gid };
  return idsOf('postgres') ?? makeUser('postgres');
}

function idsOf(name: string): RunAs {
  try {
    const [uid, gid] = ['-u', '-g'].map((which) => Number(execFileSync('id', [which, name], { encoding: 'utf8', stdio: 'pipe' })));
    return uid && gid ? { uid, gid } : undefined;
  } catch {
    return undefined; // id exits with 1 for an unknown name
  }
}

function makeUser(name: string): RunAs {
  try {
    execFileSync('groupadd', ['--system', name], { stdio: 'pipe' });
    execFileSync('useradd', ['--system', '--gid', name, '--no-create-home', name], { stdio: 'pipe' });
  } catch (failure) {
    throw new CannotStart(`PostgreSQL does not run as root, and the user ${name} could not be made: start Larderbook as a plain user.`, {
      cause: failure,
    });
  }
  return idsOf(name);
}

/** Throws CannotStart when that user cannot reach the programs or the folder. */
export function checkReach(as: RunAs, binaries: Binaries, folder: string): void {
  const closed = as && firstClosed(as, [...wayTo(binaries.postgres), binaries.postgres, ...wayTo(folder)]);
  if (!closed) return;
  throw new CannotStart(
    `The database runs as the user postgres (root may not run it), who cannot enter ${closed}: ` +
      'start Larderbook as a plain user, or keep it and DATA_DIR where everyone may pass, for example below /srv.',
  );
}

function wayTo(path: string): string[] {
  const above = dirname(path);
  return above === path ? [] : [...wayTo(above), above];
}

/** The system's own test also counts access lists and mounts. */
function firstClosed(as: { uid: number; gid: number }, paths: string[]): string {
  const script = 'for path; do test -x "$path" || { printf %s "$path"; exit; }; done';
  return execFileSync('/bin/sh', ['-c', script, 'sh', ...paths], { ...as, cwd: '/', encoding: 'utf8' });
}
