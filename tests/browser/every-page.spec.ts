import type { Page } from '@playwright/test';
import { inPseudo } from '../../packages/messages/src/pseudo';
import type { Demonstration } from '../support/in-a-browser-demonstration';
import { expect, test } from '../support/in-pseudo';
import { addressesOf, idsIn, routes, type Ids } from './looks/addresses';
import { faultsOfPage, misfits } from './looks/faults-of-page';
import { openers } from './looks/openers';
import { dataTo, untranslatedOn } from './looks/untranslated';

test.use({ locale: 'es-MX' });

test.describe.configure({ mode: 'parallel' });

let found: Promise<Ids> | undefined;
/** What the pages can be about, looked up once in each worker: none of these tests adds to it. */
const idsOf = (demonstration: Demonstration) => (found ??= idsIn(demonstration));

const beforeSignIn = ['/welcome', '/sign-in'];
const widths = { telephone: 360, tablet: 768, computer: 1280 };

/** Until the page says what it is and waits for nothing. */
async function shown(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByRole('status').filter({ hasText: inPseudo('Loading…') })).toHaveCount(0);
  for (const failed of ['This page could not be shown', 'There is no such', 'It was saved or taken away'])
    await expect(page.getByText(inPseudo(failed).slice(0, -1))).toHaveCount(0);
  await page.evaluate(() => document.fonts.ready);
}

/**
 * What is wrong with a page that is read in another language, by the width at which it is. The rules of WCAG are gone
 * through on a tablet, which takes longer than all the rest; on a computer once more for the first page, whose frame
 * stands around all of them.
 */
async function lookAt(page: Page, address: string, data: Set<string>): Promise<Record<string, string[]>> {
  await page.setViewportSize({ width: widths.tablet, height: 1024 });
  await page.goto(address);
  await shown(page);
  await expect.poll(() => untranslatedOn(page, data), address).toEqual([]); // what the server told is read as it arrives
  const tablet = await faultsOfPage(page);
  await page.setViewportSize({ width: widths.computer, height: 800 });
  const computer = address === '/' ? await faultsOfPage(page) : await misfits(page);
  await page.setViewportSize({ width: widths.telephone, height: 740 });
  const found = { computer, tablet, telephone: await misfits(page) };
  return Object.fromEntries(
    Object.entries(found)
      .filter(([, faults]) => faults.length > 0)
      .map(([width, faults]) => [`${address} on a ${width}`, faults]),
  );
}

/** The same of what opens over the page, on a telephone. */
async function lookOver(page: Page, opener: string, data: Set<string>): Promise<string[]> {
  const button = page.getByRole('button', { name: inPseudo(opener), exact: true }).first();
  if (!(await button.isVisible()) || !(await button.isEnabled())) return [];
  await button.click();
  const dialog = page.getByRole('dialog');
  await expect.poll(() => untranslatedOn(page, data), opener).toEqual([]);
  const faults = await misfits(page);
  if (await dialog.isVisible()) await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  return faults;
}

/** The pages of a draft need one that is begun on this device. */
async function beginDraft(page: Page, address: string): Promise<void> {
  await page.goto(address.replace(/(\/plan)\/.*/, '$1'));
  await page
    .getByRole('list', { name: inPseudo('Earlier versions') })
    .getByRole('button')
    .first()
    .click();
  await expect(page.getByRole('heading', { name: inPseudo('A plan to start from') })).toBeHidden();
}

for (const route of routes.filter((each) => !beforeSignIn.includes(each))) {
  test(`${route} can be read in any language and used by everybody, at every width`, async ({ page, demonstration, signedIn }) => {
    const data = dataTo(page);
    const addresses = addressesOf(route, await idsOf(demonstration));
    expect(addresses).not.toEqual([]);
    await signedIn(demonstration.owner);
    if (route.startsWith('/products/$productId/plan/')) await beginDraft(page, addresses[0] ?? '');
    for (const address of addresses) {
      expect.soft(await lookAt(page, address, data)).toEqual({});
      for (const opener of openers[route] ?? []) expect.soft(await lookOver(page, opener, data), opener).toEqual([]);
    }
  });
}

for (const route of beforeSignIn) {
  test(`${route} can be read in any language and used by everybody before signing in`, async ({ page }) => {
    expect(await lookAt(page, route, dataTo(page))).toEqual({});
  });
}
