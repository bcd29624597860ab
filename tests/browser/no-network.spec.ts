import type { Lot } from '@larderbook/contracts';
import type { Page } from '@playwright/test';
import { expect, test, type LotMade } from '../support/in-a-browser';
import { keyIn } from './steps/key-in';
import { recordAt } from './steps/record-at';

test.use({ viewport: { width: 768, height: 1024 }, serviceWorkers: 'allow', mayLog: /ERR_INTERNET_DISCONNECTED/ });

/** Until the pages of the book are on the device, as they are a few seconds after the first visit. */
const pagesKept = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((claimed) => navigator.serviceWorker.addEventListener('controllerchange', claimed, { once: true }));
  });
const coldRoomOf = (lot: Lot) =>
  lot.controlPoints.filter(({ controlPoint }) => controlPoint.name === 'Cold room').flatMap(({ readings }) => readings);

test.describe('in the walk-in, without a signal', () => {
  let lot: LotMade;
  test.beforeEach(async ({ page, kitchen, aLot, signedIn }) => {
    lot = await aLot('chilled');
    await signedIn(kitchen.operator);
    await page.goto(`/lots/${lot.lotId}`);
    await expect(page.getByRole('region', { name: `Day sheet of lot ${lot.code}` })).toBeVisible();
  });

  test('entries are judged and kept on the device, and sent once when the signal is back', async ({ page, context, kitchen }) => {
    await context.setOffline(true);
    await recordAt(page, 'Cold room');
    const dialog = page.getByRole('dialog');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('47');
    await expect(dialog.getByText('Missed', { exact: true })).toBeVisible();
    await keyIn(page, 'Temperature', '37.5');
    await expect(dialog.getByText(/^Kept on this device\. .*until then this is a preview\.$/)).toBeVisible();
    await expect(dialog.getByText('Met', { exact: true })).toBeVisible();
    await dialog.getByRole('button', { name: 'Done' }).click();
    await expect(page.getByRole('region', { name: `Day sheet of lot ${lot.code}` }).getByText(/Cold room 37\.5 °F/)).toBeVisible();
    await page.getByRole('button', { name: '1 not sent yet' }).click();
    await expect(
      page.getByText('There is no connection. The entries are safe here and are sent by themselves when it is back.'),
    ).toBeVisible();
    expect(coldRoomOf(await kitchen.showLot(lot.lotId))).toHaveLength(0);

    await context.setOffline(false);
    await expect(page.getByText('Everything entered on this device is in the record book.')).toBeVisible();
    await page.reload();
    await expect(page.getByRole('button', { name: 'All in the book' })).toBeVisible();
    expect(coldRoomOf(await kitchen.showLot(lot.lotId))).toMatchObject([{ entered: { value: 37.5, unit: '°F' } }]);
  });

  test('a tablet that is restarted there still shows the day, and what it keeps', async ({ page, context, kitchen }) => {
    await page.goto('/');
    await expect(page.getByRole('region', { name: 'The shop today' })).toBeVisible();
    await page
      .getByRole('link', { name: new RegExp(lot.code) })
      .first()
      .click();
    await expect(page.getByRole('region', { name: `Day sheet of lot ${lot.code}` })).toBeVisible();
    await pagesKept(page);
    await context.setOffline(true);
    await recordAt(page, 'Cold room');
    await keyIn(page, 'Temperature', '36.5');
    await expect(page.getByRole('dialog').getByText(/^Kept on this device/)).toBeVisible();

    await page.reload();
    await expect(page.getByRole('button', { name: '1 not sent yet' })).toBeVisible();
    await expect(page.getByRole('region', { name: `Day sheet of lot ${lot.code}` }).getByText(/Cold room 36\.5 °F/)).toBeVisible();
    await page.getByRole('link', { name: 'Today' }).click();
    await expect(page.getByRole('region', { name: 'The shop today' }).getByText(lot.code).first()).toBeVisible();

    await context.setOffline(false);
    await expect(page.getByRole('button', { name: 'All in the book' })).toBeVisible();
    expect(coldRoomOf(await kitchen.showLot(lot.lotId))).toHaveLength(1);
  });

  test.describe('what the record book refuses afterwards', () => {
    test.use({ mayLog: /ERR_INTERNET_DISCONNECTED|status of 403/ });

    test('stays in sight with the reason, until a person has dealt with it', async ({ page, context, kitchen, shop }) => {
      await context.setOffline(true);
      await recordAt(page, 'Cold room');
      await keyIn(page, 'Temperature', '36.4');
      await expect(page.getByRole('dialog').getByText(/^Kept on this device/)).toBeVisible();
      await page.getByRole('button', { name: 'Done' }).click();
      const roles = (role: string) =>
        shop.owner.put(`/role-grants/${crypto.randomUUID()}`, { personId: kitchen.operator.personId, roles: [role] });
      await roles('inspector');
      await context.setOffline(false);
      await page.getByRole('button', { name: '1 not accepted' }).click();
      const parked = page.getByRole('dialog').getByRole('region', { name: /^Cold room 36\.4 °F/ });
      await expect(parked.getByText(/This is for people who record entries/)).toBeVisible();
      await roles('operator');
      await parked.getByRole('button', { name: 'Send again' }).click();
      await expect(page.getByText('Everything entered on this device is in the record book.')).toBeVisible();
      expect(coldRoomOf(await kitchen.showLot(lot.lotId))).toHaveLength(1);
    });
  });
});
