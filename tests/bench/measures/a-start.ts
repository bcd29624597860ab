import { join } from 'node:path';
import { startProgram } from '../../support/program';
import { inTemporaryFolder } from '../larder/temporary-folder';
import type { Measured } from '../report/figure';

/** From the command to the first answer that it is ready: on an empty folder, and again on what the first start made. */
export const aStart = (): Promise<Measured> =>
  inTemporaryFolder(async (folder) => {
    const dataDir = join(folder, 'data');
    const first = await secondsToReady(dataDir);
    const again = await secondsToReady(dataDir);
    return {
      title: 'Start, with the embedded database',
      figures: [
        { what: 'the first time, on an empty folder', value: first, unit: 's' },
        { what: 'again, on existing data', value: again, unit: 's' },
      ],
    };
  });

async function secondsToReady(dataDir: string): Promise<number> {
  const began = performance.now();
  const program = startProgram({ DATA_DIR: dataDir });
  try {
    const { status } = await fetch(`${await program.open}/ready`);
    if (status !== 200) throw new Error(`Larderbook is open and not ready: ${status}`);
    return (performance.now() - began) / 1000;
  } finally {
    await program.stop();
  }
}
