import { execFile, type ExecFileException } from 'node:child_process';
import { chownSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join, parse } from 'node:path';
import { CannotStart } from '../cannot-start';
import type { Binaries } from './binaries';
import type { RunAs } from './unprivileged-user';

export type Cluster = { folder: string; binaries: Binaries; as: RunAs };

/** Each line of `sql` is one statement. A start cut short leaves nothing half-made. */
export async function makeCluster(
  cluster: Cluster,
  sql: string[],
  options: { locale?: string[]; signal?: AbortSignal } = {},
): Promise<void> {
  const { folder, binaries, as } = cluster;
  removeUnfinished(folder);
  const aside = `${folder}.unfinished-${process.pid}`;
  mkdirSync(aside, { mode: 0o700 });
  if (as) chownSync(aside, as.uid, as.gid);

  const run = (program: string, args: string[], input = '') => runAs(as, program, args, input, options.signal);
  await run(binaries.initdb, [
    ...['--pgdata', aside, '--username', 'postgres', '--encoding', 'UTF8', '--data-checksums'],
    ...(options.locale ?? ['--locale-provider', 'builtin', '--builtin-locale', 'C.UTF-8', '--locale', 'C']),
    ...['--auth-local', 'peer', '--auth-host', 'scram-sha-256'], // nobody signs in as postgres: it has no password
  ]);
  await run(binaries.postgres, ['--single', '-c', 'exit_on_error=on', '-D', aside, 'postgres'], sql.join('\n'));
  renameSync(aside, folder);
}

function removeUnfinished(folder: string): void {
  const above = dirname(folder);
  for (const name of readdirSync(above)) {
    if (name.startsWith(`${basename(folder)}.unfinished-`)) rmSync(join(above, name), { recursive: true, force: true });
  }
}

function runAs(as: RunAs, program: string, args: string[], input: string, signal?: AbortSignal): Promise<void> {
  return new Promise((done, fail) => {
    const child = execFile(program, args, { ...as, cwd: parse(program).root, env: plainEnvironment(), signal }, (failure, out, err) =>
      failure ? fail(asSentence(failure, `${out}\n${err}`)) : done(),
    );
    child.stdin?.end(input);
  });
}

/** PostgreSQL writes messages in English and takes no settings from outside. */
export function plainEnvironment(): NodeJS.ProcessEnv {
  const outside = Object.entries(process.env).filter(([name]) => !name.startsWith('PG') && !name.startsWith('LC_'));
  return { ...Object.fromEntries(outside), LC_ALL: 'C' };
}

function asSentence(failure: ExecFileException, said: string): Error {
  if (failure.name === 'AbortError') return failure;
  return new CannotStart(`The database could not be made: ${complaint(said) ?? failure.message}`, { cause: failure });
}

export function complaint(said: string): string | undefined {
  const line = said.split('\n').findLast((text) => /(FATAL|PANIC|error|ERROR): |while loading shared libraries/.test(text));
  return line?.replace(/^.*?(FATAL|PANIC|error|ERROR): +/, '').trim();
}

export const isMade = (cluster: Cluster): boolean => existsSync(join(cluster.folder, 'PG_VERSION'));
