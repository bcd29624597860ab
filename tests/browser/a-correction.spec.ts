import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { ship } from '../builders/a-sausage-lot';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { expect, test } from '../support/in-a-browser';

test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true });

test('a delivery is corrected: the old weight stays, struck through, with reason and name', async ({ page, shop, kitchen, signedIn }) => {
  const receiptId = await kitchen.receive('pork');
  await signedIn(shop.owner);
  await page.goto(`/receiving/${receiptId}`);
  await page.getByRole('button', { name: 'Correct', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Why is it corrected?').fill('Read the wrong scale.');
  await dialog.getByLabel('Weight', { exact: true }).fill('90');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog.getByText('Saved. What was made of it has been judged again.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  const corrected = page.getByRole('listitem').filter({ hasText: 'Read the wrong scale.' });
  await expect(corrected).toContainText(`Corrected by ${shop.owner.name}`);
  await expect(corrected.locator('s', { hasText: '100 kg' })).toBeVisible();
  await expect(corrected).toContainText('→ 90 kg');
});

test('a delivery is voided: it stays in the list, struck through, with reason and name', async ({ page, shop, kitchen, signedIn }) => {
  const receiptId = await kitchen.receive('pork');
  await signedIn(shop.owner);
  await page.goto(`/receiving/${receiptId}`);
  await page.getByRole('button', { name: 'Void', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Entered twice' }).click();
  await expect(dialog.getByText('It is voided.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  const voided = page.getByRole('listitem').filter({ hasText: 'Entered twice' });
  await expect(voided).toContainText(`Voided by ${shop.owner.name}`);
  await expect(page.getByText(`${kitchen.operator.name}`, { exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: /^(Correct|Void)$/ })).toHaveCount(0);

  await page.getByRole('link', { name: 'All deliveries' }).click();
  const line = page.getByRole('listitem').filter({ hasText: `Voided by ${shop.owner.name}: Entered twice` });
  await expect(line.locator('s', { hasText: '100 kg' })).toBeVisible();
});

test('a check of an instrument is voided: it is due again, and says why', async ({ page, shop, signedIn }) => {
  const [instrumentId, name] = [v7(), `Probe ${v7().slice(-6)}`];
  const probe = { name, kind: 'thermometer', unit: '°F', tolerance: 2, checkEveryDays: 7 } as const;
  await done(ask(shop.operator, contract.recordInstrument, { instrumentId, ...probe }));
  const check = { method: 'ice point', expected: 32, observed: 32, action: '', takenAt: new Date().toISOString() } as const;
  await done(ask(shop.operator, contract.recordCalibration, { calibrationId: v7(), instrumentId, ...check }));
  await signedIn(shop.owner);
  await page.goto('/shop/instruments');
  await page.getByRole('button', { name: `Correct the check of ${name}` }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Why?').fill('It was another probe.');
  await dialog.getByRole('button', { name: 'Void' }).click();
  await expect(dialog.getByText('Saved. What was measured with it since is flagged anew.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  const row = page.getByRole('row').filter({ hasText: name });
  await expect(row).toContainText(`Voided by ${shop.owner.name}`);
  await expect(row).toContainText('It was another probe.');
  await expect(row).toContainText('none that counts');
});

test('the end of a stage is corrected, and voided with a reason', async ({ page, shop, aLot, signedIn }) => {
  const { lotId } = await aLot('cooked');
  await signedIn(shop.owner);
  await page.goto(`/lots/${lotId}`);
  await page.getByRole('button', { name: 'Correct Cook finished' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Typed wrongly' }).click();
  const ended = dialog.getByLabel('When was it finished?');
  const [day = '', time = ''] = (await ended.inputValue()).split('T');
  const earlier = aMinuteBefore(time);
  await ended.fill(`${day}T${earlier}`);
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  const sheet = page.getByRole('region', { name: /^Day sheet of lot/ });
  const line = sheet.getByRole('listitem').filter({ hasText: 'Typed wrongly' });
  await expect(line.locator('s', { hasText: onTheWall(time) })).toBeVisible();
  await expect(line).toContainText(`by ${shop.owner.name}`);
  await expect(line).toContainText(onTheWall(earlier));

  await page.getByRole('button', { name: 'Correct Cook finished' }).click();
  await dialog.getByRole('button', { name: 'Void', exact: true }).click();
  await dialog.getByRole('button', { name: 'It never happened' }).click();
  await dialog.getByRole('button', { name: 'Done' }).click();
  const voided = sheet.getByRole('listitem').filter({ hasText: 'End of Cook voided' });
  await expect(voided).toContainText('It never happened');
  await expect(voided).toContainText(shop.owner.name);
});

/** "2:05 pm" for "14:05", as a shop on Letter paper reads it. */
function onTheWall(time: string): string {
  const hour = Number(time.slice(0, 2));
  return `${hour % 12 || 12}:${time.slice(3, 5)} ${hour < 12 ? 'am' : 'pm'}`;
}

/** "09:59" before "10:00", by the clock on the wall; midnight is left alone. */
function aMinuteBefore(time: string): string {
  const minutes = Math.max(0, Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5)) - 1);
  return [Math.floor(minutes / 60), minutes % 60].map((figure) => String(figure).padStart(2, '0')).join(':');
}

test('a shipment is corrected, then voided: it stays in the list, and its packages are back', async ({
  page,
  shop,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { packingId, code } = await aLot('reviewed');
  await ship({ ...kitchen, now: () => new Date().toISOString() }, packingId, 10);
  await signedIn(shop.owner);
  await page.goto('/shipping/shipments');
  const dialog = page.getByRole('dialog');
  const entry = page.getByRole('listitem').filter({ hasText: code }).first(); // its lines are items as well
  await entry.getByRole('button', { name: /^Correct shipment / }).click();
  await dialog.getByLabel('Why is it corrected?').fill('Two stayed behind.');
  await dialog.getByLabel(/^Packages of /).fill('8');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  const corrected = entry.getByRole('listitem').filter({ hasText: `Corrected by ${shop.owner.name}` });
  await expect(corrected).toContainText('Two stayed behind.');
  await expect(corrected.locator('s', { hasText: '10' })).toBeVisible();

  await entry.getByRole('button', { name: /^Void shipment / }).click();
  await dialog.getByRole('button', { name: 'It never happened' }).click();
  await expect(dialog.getByText('It is voided. Its packages are back.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await expect(entry.getByText(`Voided by ${shop.owner.name}`)).toBeVisible();
});

test('an inspector reads what was recorded, and may neither correct nor void it', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const receiptId = await kitchen.receive('pork');
  const { lotId, packingId } = await aLot('reviewed');
  await ship({ ...kitchen, now: () => new Date().toISOString() }, packingId, 10);
  await signedIn(await shop.hire('inspector'));
  for (const [address, shown] of [
    [`/receiving/${receiptId}`, '100 kg'],
    [`/lots/${lotId}`, 'Cook finished'],
    ['/shipping/shipments', /^Shipment \d+/],
  ] as const) {
    await page.goto(address);
    await expect(page.getByText(shown).first()).toBeVisible();
    await expect(page.getByRole('button', { name: /^(Correct|Void)/ })).toHaveCount(0);
  }
});
