import type { Locator, Page } from '@playwright/test';
import { expect, test } from '../support/in-a-browser';
import { faultsOfPage } from './looks/faults-of-page';
import { recordAt } from './steps/record-at';

/** Goes on with the Tab key until the thing has the focus, as somebody without a mouse does. */
async function tabTo(page: Page, target: Locator, most = 60): Promise<void> {
  await expect(target).toBeVisible();
  for (let i = 0; i < most; i++) {
    await page.keyboard.press('Tab');
    if (await target.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`${String(target)} cannot be reached with the Tab key`);
}

test('a reading is recorded with the keyboard alone', async ({ page, kitchen, aLot, signedIn }) => {
  const lot = await aLot('chilled');
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lot.lotId}`);
  await tabTo(page, page.getByRole('button', { name: /^Cold room/ }));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('textbox', { name: 'Temperature' }));
  await page.keyboard.type('37.2');
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  await tabTo(page, dialog.getByRole('button', { name: 'Done' }));
  await page.keyboard.press('Enter');
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('region', { name: `Day sheet of lot ${lot.code}` }).getByText('37.2 °F', { exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Cold room met/ })).toBeFocused();
});

for (const width of [360, 768]) {
  test(`what opens over a page can be read and used by everybody, ${width} px wide`, async ({ page, kitchen, aLot, signedIn }) => {
    const lot = await aLot('chilled');
    await signedIn(kitchen.operator);
    await page.setViewportSize({ width, height: 1000 });
    await page.goto(`/lots/${lot.lotId}`);
    const close = () =>
      page
        .getByRole('dialog')
        .getByRole('button', { name: /^(Cancel|Close|Done)$/ })
        .click();

    await recordAt(page, 'Cold room');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('47');
    expect(await faultsOfPage(page)).toEqual([]);
    await page.getByRole('textbox', { name: 'Temperature' }).fill('370');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('370 °F is unusual here.')).toBeVisible();
    expect(await faultsOfPage(page)).toEqual([]);
    await close();

    for (const opener of [
      'Put in meat',
      'Weigh an ingredient',
      'Pack',
      'Take out',
      'Something unforeseen',
      'All in the book',
      kitchen.operator.name,
    ]) {
      await page.getByRole('button', { name: opener }).last().click();
      await expect(page.getByRole('dialog')).toBeVisible();
      expect.soft(await faultsOfPage(page), opener).toEqual([]);
      await close();
    }
  });
}
