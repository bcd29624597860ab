import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { furnishDemonstration } from './in-a-browser-demonstration';
import { openLarderbook } from './larderbook';
import { buildProgram, startToBuildInPseudo } from './program';

/** Where the tests find the furnished Larderbook, to start on a copy of it. */
const furnished = 'LARDERBOOK_FURNISHED';
const outcomeIn = (folder: string) => join(folder, 'furnished');

/**
 * Before the browsers open: what they look at is built from the present sources. While the first of them go about a shop
 * of their own, the demonstration lives its two months once for all that look round in it.
 */
export default async function setUp(): Promise<() => Promise<void>> {
  buildProgram();
  const larderbook = await openLarderbook();
  process.env[furnished] = larderbook.folder;
  const outcome = (failure?: unknown) => writeFileSync(outcomeIn(larderbook.folder), failure ? String(failure) : '');
  const lived = furnishDemonstration(larderbook)
    .then(() => larderbook.stop())
    .then(() => outcome(), outcome);
  const built = startToBuildInPseudo();
  return async () => {
    await larderbook.stop();
    await Promise.all([lived, built]);
    larderbook.throwAway();
  };
}

/** The folder of a Larderbook that was stopped, with the demonstration in it: waits until that has lived its two months. */
export async function furnishedFolder(): Promise<string> {
  const folder = process.env[furnished] ?? '';
  while (!existsSync(outcomeIn(folder))) await wait(100);
  const failure = readFileSync(outcomeIn(folder), 'utf8');
  if (failure) throw new Error(`The demonstration could not be opened: ${failure}`);
  return folder;
}
