import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/** Ids are reused, soon in a new container; the start time, in the system's own words, tells the processes apart. */
export function bornAt(pid: number): string | undefined {
  if (!answers(pid)) return undefined;
  if (process.platform === 'linux') return bornOnLinux(pid);
  if (process.platform === 'win32') return 'some time ago';
  return ps(pid, 'lstart');
}

/** Undefined also when the process may not be seen. */
export function commandOf(pid: number): string | undefined {
  if (!answers(pid)) return undefined;
  if (process.platform === 'linux') return readProc(pid, 'cmdline')?.replaceAll('\0', ' ');
  return process.platform === 'win32' ? undefined : ps(pid, 'command');
}

function answers(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (failure) {
    return failure instanceof Error && 'code' in failure && failure.code === 'EPERM'; // EPERM: the process lives, but is not ours
  }
}

/** Fields 3 and 22 of proc_pid_stat(5): state and start time. A zombie counts as gone. */
function bornOnLinux(pid: number): string | undefined {
  const fields = readProc(pid, 'stat')
    ?.replace(/^.*\) /s, '')
    .split(' ');
  if (!fields || fields[0] === 'Z') return undefined;
  return `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()} ${fields[19]}`;
}

function readProc(pid: number, file: string): string | undefined {
  const path = `/proc/${pid}/${file}`;
  return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
}

function ps(pid: number, column: string): string | undefined {
  try {
    return execFileSync('ps', ['-ww', '-o', `${column}=`, '-p', String(pid)], { encoding: 'utf8' }).trim() || undefined;
  } catch {
    return undefined; // ps exits with 1 when there is no such process
  }
}
