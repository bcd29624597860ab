import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { projectRoot } from '../../apps/api/src/project-root';

export type Ending = { code: number | null; signal: NodeJS.Signals | null };

/** Larderbook as a person starts it: the built program in a process of its own. */
export type Program = {
  pid: number;
  /** Resolves with the address once it is printed; rejects when the program ends before. */
  open: Promise<string>;
  ended: Promise<Ending>;
  said(): { out: string; err: string };
  /** Sends the signal and waits for the end. */
  stop(signal?: NodeJS.Signals): Promise<Ending>;
};

/** Once before the first start: what `npm start` does before it starts. */
export function buildProgram(): void {
  execFileSync(process.execPath, [join(projectRoot, 'apps/api/build-if-stale.mjs')]);
}

const inPseudo = join(projectRoot, '.config/pseudo/build-if-stale.mjs');

/** Goes on beside whatever comes before the first test that needs it; a failure is that test's to find. */
export const startToBuildInPseudo = (): Promise<unknown> => once(spawn(process.execPath, [inPseudo], { stdio: 'ignore' }), 'close');

/** Builds Larderbook with the language nobody speaks in the place of Spanish, for tests alone, and says where it lies. */
export function buildInPseudo(): string {
  execFileSync(process.execPath, [inPseudo]);
  return join(projectRoot, 'node_modules/.larderbook-in-pseudo');
}

/** Starts the program that was built, with these settings alone, on a free port unless one is named. */
export function startProgram(settings: Record<string, string>, as?: { uid: number; gid: number }, built = projectRoot): Program {
  const env = { PATH: process.env.PATH, PORT: '0', ...settings };
  const child = spawn(process.execPath, ['--enable-source-maps', join(built, 'apps/api/dist/main.js')], {
    env,
    cwd: '/',
    ...as,
    stdio: 'pipe',
  });
  const said = { out: '', err: '' };
  child.stdout.on('data', (text: Buffer) => (said.out += text.toString()));
  child.stderr.on('data', (text: Buffer) => (said.err += text.toString()));

  const ended = once(child, 'close').then(([code, signal]) => ({ code, signal }) as Ending);
  const open = new Promise<string>((resolve, reject) => {
    child.stdout.on('data', () => {
      const address = /Larderbook is open at (\S+)\n/.exec(said.out)?.[1];
      if (address) resolve(address);
    });
    void ended.then(() => reject(new Error(`Larderbook ended before it was open: ${said.err}`)));
  });
  open.catch(() => undefined); // whoever waits for it still sees the rejection

  const stop = (signal: NodeJS.Signals = 'SIGTERM') => {
    child.kill(signal);
    return ended;
  };
  return { pid: child.pid ?? 0, open, ended, said: () => said, stop };
}
