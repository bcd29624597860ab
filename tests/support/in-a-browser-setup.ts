import { furnishDemonstration } from './in-a-browser-demonstration';
import { openLarderbook } from './larderbook';
import { buildProgram } from './program';

/** Where the tests find the furnished Larderbook, to start on a copy of it. */
export const furnished = 'LARDERBOOK_FURNISHED';

/**
 * Before the browsers open: what they look at is built from the present sources, and the demonstration lives its two
 * months once for all of them.
 */
export default async function setUp(): Promise<() => void> {
  buildProgram();
  const larderbook = await openLarderbook();
  await furnishDemonstration(larderbook);
  await larderbook.stop();
  process.env[furnished] = larderbook.folder;
  return () => larderbook.throwAway();
}
