import { test as base, expect } from './in-a-browser';
import { furnished } from './in-a-browser-setup';
import { openLarderbook, type Larderbook } from './larderbook';
import { buildInPseudo } from './program';

export { expect };

/**
 * Tests of the pages by a reader of the language nobody speaks, which stands in the place of Spanish in a build of its
 * own: see .config/pseudo. It has every message of English, about 40 % longer.
 */
export const test = base.extend<object, { larderbook: Larderbook }>({
  larderbook: [
    async ({}, use) => {
      const larderbook = await openLarderbook(process.env[furnished], buildInPseudo());
      await use(larderbook);
      await larderbook.close();
    },
    { scope: 'worker', timeout: 240_000 }, // two builds, on a machine that has other work
  ],
});
