import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startProgram } from './program';

/** A Larderbook that runs by itself on a folder that is thrown away, with nobody in it. */
export type Larderbook = { address: string; close(): Promise<void> };

export async function openLarderbook(): Promise<Larderbook> {
  const folder = mkdtempSync(join(tmpdir(), 'larderbook-browser-'));
  chmodSync(folder, 0o711); // run by root, the database belongs to another user
  const program = startProgram({ DATA_DIR: join(folder, 'data') });
  const close = async () => {
    await program.stop();
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    return { address: await program.open, close };
  } catch (failure) {
    await close();
    throw failure;
  }
}
