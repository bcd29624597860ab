import { execFileSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startProgram } from './program';

/** A Larderbook that runs by itself on a folder that is thrown away. */
export type Larderbook = {
  address: string;
  folder: string;
  stop(): Promise<void>;
  throwAway(): void;
  /** Stops it and throws its folder away. */
  close(): Promise<void>;
};

/**
 * With nobody in it; or on a copy of the folder of another one that was stopped, as one restores a backup. `built` is
 * where the program lies, if it is not the one that people start.
 */
export async function openLarderbook(copyOf?: string, built?: string): Promise<Larderbook> {
  const folder = mkdtempSync(join(tmpdir(), 'larderbook-browser-'));
  chmodSync(folder, 0o711); // run by root, the database belongs to another user
  if (copyOf) execFileSync('cp', ['-a', `${copyOf}/.`, folder]);
  const program = startProgram({ DATA_DIR: join(folder, 'data') }, undefined, built);
  const stop = async () => void (await program.stop());
  const throwAway = () => rmSync(folder, { recursive: true, force: true });
  const close = () => stop().then(throwAway);
  try {
    return { address: await program.open, folder, stop, throwAway, close };
  } catch (failure) {
    await close();
    throw failure;
  }
}
