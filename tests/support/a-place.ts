import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startProgram, type Program } from './program';

/** A folder of its own in which programs are started; nothing of it is left when it is closed. */
export type Place = {
  home: string;
  dataDir: string;
  start(settings?: Record<string, string>, as?: { uid: number; gid: number }): Program;
  /** Fills it with what another data folder holds, rights and owners too. */
  copyOf(dataDir: string): void;
  /** The process id of its database. */
  postmaster(): number;
  /** A file of the data folder, for what is in it or whether it is there. */
  has(file: string): boolean;
  read(file: string): string;
  close(): Promise<void>;
};

export function aPlace(): Place {
  const home = mkdtempSync(join(tmpdir(), 'larderbook-start-'));
  chmodSync(home, 0o711); // run by root, the database belongs to another user
  const dataDir = join(home, 'data');
  const programs: Program[] = [];
  const read = (file: string) => readFileSync(join(dataDir, file), 'utf8');
  return {
    home,
    dataDir,
    start: (settings = {}, as) => {
      const program = startProgram({ DATA_DIR: dataDir, ...settings }, as);
      programs.push(program);
      return program;
    },
    copyOf: (other) => void execFileSync('cp', ['-a', other, dataDir]),
    postmaster: () => Number(read('postgres/postmaster.pid').split('\n')[0]),
    has: (file) => existsSync(join(dataDir, file)),
    read,
    close: async () => {
      await Promise.all(programs.map((program) => program.stop()));
      rmSync(home, { recursive: true, force: true });
    },
  };
}

/** A test in a place of its own, so that several can go on side by side. */
export const inAPlace = (work: (place: Place) => Promise<void>) => async (): Promise<void> => {
  const place = aPlace();
  try {
    await work(place);
  } finally {
    await place.close();
  }
};
