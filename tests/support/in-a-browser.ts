import { expect, type BrowserContext, type Page } from '@playwright/test';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot, type Reached } from '../builders/a-sausage-lot';
import { aShop, type Shop, type Worker } from '../builders/a-shop';
import { FixedClock } from './fixed-clock';
import { handsOf, type SignsIn, type State } from './in-a-browser-hands';
import { test as quiet } from './in-a-browser-quiet';
import { openLarderbook, type Larderbook } from './larderbook';

export { expect };

/** The shop of these tests: who founded it, and those who were hired. */
export type Crew = Shop & { operator: Worker; reviewer: Worker };

type OfEachTest = {
  /** From now on the page is this person's, without the sign-in page. */
  signedIn(who: SignsIn): Promise<void>;
  /** Another tablet in the same shop, in this person's hands. */
  anotherTablet(who: SignsIn): Promise<Page>;
};
export type LotMade = Awaited<ReturnType<typeof aSausageLot>>;
type OfTheWorker = {
  larderbook: Larderbook;
  shop: Crew;
  /** A smoked sausage with its plan in that shop, and the two people who make and review it. */
  kitchen: SausageKitchen;
  /** A lot of it, brought this far in the last five hours, everything met. */
  aLot(reached: Reached): Promise<LotMade>;
  /** What a device remembers of a person who signed in on it. */
  handsOf(who: SignsIn): Promise<State>;
};

const fiveHours = 5 * 60 * 60_000;
/** By which the kitchen writes down when a thing was taken; the Larderbook's own clock is the real one. */
const clock = new FixedClock(new Date());

/**
 * Tests of the pages. Each worker of Playwright has a Larderbook of its own with one shop in it, which its tests share:
 * each makes the products and lots it is about.
 */
export const test = quiet.extend<OfEachTest, OfTheWorker>({
  larderbook: [
    async ({}, use) => {
      const larderbook = await openLarderbook();
      await use(larderbook);
      await larderbook.close();
    },
    { scope: 'worker', timeout: 600_000 },
  ],
  shop: [
    async ({ larderbook }, use) => {
      const shop = await aShop({ app: larderbook.address });
      await use({ ...shop, operator: await shop.hire('operator'), reviewer: await shop.hire('reviewer') });
    },
    { scope: 'worker', timeout: 600_000 },
  ],
  kitchen: [async ({ shop }, use) => use(await aSausageKitchen(shop, { clock })), { scope: 'worker', timeout: 600_000 }],
  aLot: [
    async ({ kitchen }, use) => {
      await use((reached) => {
        clock.moveTo(new Date(Date.now() - fiveHours));
        return aSausageLot(kitchen, { clock }, reached);
      });
    },
    { scope: 'worker' },
  ],
  baseURL: ({ larderbook }, use) => use(larderbook.address),

  handsOf: [
    async ({ larderbook }, use) => {
      const known = new Map<string, State>();
      await use(async (who) => {
        const state = known.get(who.userName) ?? (await handsOf(larderbook, who));
        known.set(who.userName, state);
        return state;
      });
    },
    { scope: 'worker' },
  ],
  signedIn: async ({ context, handsOf }, use) => {
    await use(async (who) => context.setStorageState(await handsOf(who)));
  },
  anotherTablet: async ({ browser, larderbook, handsOf, listenTo }, use) => {
    const tablets: BrowserContext[] = [];
    await use(async (who) => {
      const tablet = await browser.newContext({ baseURL: larderbook.address, storageState: await handsOf(who) });
      tablets.push(tablet);
      listenTo(tablet);
      return tablet.newPage();
    });
    for (const tablet of tablets) await tablet.close();
  },
});
