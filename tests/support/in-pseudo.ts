import { test as base, expect } from './in-a-browser';
import { furnishDemonstration, type Demonstration } from './in-a-browser-demonstration';
import { furnishedFolder } from './in-a-browser-setup';
import { openLarderbook, type Larderbook } from './larderbook';
import { buildInPseudo } from './program';

export { expect };

/**
 * Tests of the pages by a reader of the language nobody speaks, which stands in the place of Spanish in a build of its
 * own: see .config/pseudo. It has every message of English, about 40 % longer. The demonstration is in their Larderbook.
 */
export const test = base.extend<object, { larderbook: Larderbook; demonstration: Demonstration }>({
  larderbook: [
    async ({}, use) => {
      const larderbook = await openLarderbook(await furnishedFolder(), buildInPseudo());
      await use(larderbook);
      await larderbook.close();
    },
    { scope: 'worker', timeout: 600_000 }, // two months and two builds, on a machine that has other work
  ],
  demonstration: [
    // where there is no shop of one's own, the sign-in page has the demonstration's people on it and no form
    async ({ larderbook, shop: _ }, use) => use(await furnishDemonstration(larderbook)),
    { scope: 'worker', timeout: 600_000 },
  ],
});
