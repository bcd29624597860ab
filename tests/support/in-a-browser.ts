import { test as base } from '@playwright/test';
import { aShop, type Shop, type Worker } from '../builders/a-shop';
import { openLarderbook, type Larderbook } from './larderbook';

export { expect } from '@playwright/test';

/** The shop of these tests: who founded it, and two who were hired. */
export type Crew = Shop & { operator: Worker; reviewer: Worker };

type OfEachTest = {
  /** From now on the page is this person's, without the sign-in page. */
  signedIn(who: Worker): Promise<void>;
};
type OfTheWorker = { larderbook: Larderbook; shop: Crew };

/**
 * Tests of the pages. Each worker of Playwright has a Larderbook of its own with one shop in it, which its tests share:
 * each makes the products and lots it is about.
 */
export const test = base.extend<OfEachTest, OfTheWorker>({
  larderbook: [
    async ({}, use) => {
      const larderbook = await openLarderbook();
      await use(larderbook);
      await larderbook.close();
    },
    { scope: 'worker', timeout: 90_000 },
  ],
  shop: [
    async ({ larderbook }, use) => {
      const shop = await aShop({ app: larderbook.address });
      await use({ ...shop, operator: await shop.hire('operator'), reviewer: await shop.hire('reviewer') });
    },
    { scope: 'worker', timeout: 90_000 },
  ],
  baseURL: ({ larderbook }, use) => use(larderbook.address),
  signedIn: async ({ context, larderbook }, use) => {
    await use(async (who) => {
      const [name = '', value = ''] = who.cookie().split(/=(.*)/s);
      await context.addCookies([{ name, value, url: larderbook.address }]);
    });
  },
});
