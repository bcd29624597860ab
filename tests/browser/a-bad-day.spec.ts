import { v7 } from 'uuid';
import { done } from '../builders/a-shop';
import { expect, test } from '../support/in-a-browser';
import { keyIn } from './steps/key-in';
import { recordAt } from './steps/record-at';
import { tapOnTo } from './steps/tap-on-to';

const parts = [
  ['Cause', 'The door of the cold room had stood open. It was shut.'],
  ['Under control again', 'Read again after 40 minutes: 37 °F.'],
  ['Prevention', 'A chime sounds when the door is open for a minute.'],
  ['Product', 'All ten packages stand apart under a tag; nobody else has the key.'],
];

test('a bad day: a limit is missed after the lot was packed', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const lot = await aLot('packed');

  await test.step('the miss is said at once, with what the plan says to do, and a deviation is open', async () => {
    await signedIn(shop.owner);
    await page.goto(`/lots/${lot.lotId}`);
    await recordAt(page, 'Cold room');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('47');
    const dialog = page.getByRole('dialog', { name: 'Cold room' });
    await expect(dialog.getByText('Missed', { exact: true })).toBeVisible();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
    await expect(dialog.getByText('Missed', { exact: true })).toBeVisible();
    await expect(dialog.getByText('What the plan says to do')).toBeVisible();
    await expect(dialog.getByText('Hold the lot and call the owner.')).toBeVisible();
    await dialog.getByRole('link', { name: 'Record the corrective action' }).click();
    await expect(page.getByRole('heading', { name: /^Deviation \d+$/, level: 1 })).toBeVisible();
    await expect(page.getByRole('region', { name: 'What was missed' }).getByText(/47 °F/).first()).toBeVisible();
  });

  await test.step('the lot is on hold, and stands so on the sheet of the day', async () => {
    await signedIn(kitchen.operator);
    await page.goto(`/lots/${lot.lotId}`);
    await expect(page.getByText('On hold', { exact: true })).toBeVisible();
    await page.goto('/');
    const sheet = page.getByRole('region', { name: 'The shop today' });
    await expect(sheet.getByRole('heading', { name: /^On hold/ })).toBeVisible();
    await expect(sheet.getByRole('link', { name: `${lot.code} Smoked sausage` }).first()).toBeVisible();
  });

  await test.step('none of its packages may ship', async () => {
    await signedIn(kitchen.operator);
    await page.goto('/shipping');
    const row = page.getByRole('row').filter({ hasText: lot.code });
    await expect(row.getByText('May not ship')).toBeVisible();
    await expect(row.getByText('on hold')).toBeVisible();
    const customerId = v7();
    await done(shop.owner.put(`/customers/${customerId}`, { name: 'Alder Row Deli', address: '', contact: '' }));
    const refused = await kitchen.operator.put(`/shipments/${v7()}`, {
      customerId,
      document: '',
      takenAt: new Date().toISOString(),
      lines: [{ packingId: lot.packingId, count: 1 }],
    });
    expect(refused.body).toMatchObject({ code: 'not-cleared', errors: [{ pointer: '#/lines/0' }] });
  });

  await test.step('its review is refused while the deviation is open', async () => {
    await signedIn(kitchen.reviewer);
    await page.goto(`/lots/${lot.lotId}/review`);
    await expect(page.getByText('May not leave yet')).toBeVisible();
    await expect(page.getByRole('link', { name: 'Open its deviation' })).toBeVisible();
    await expect(page.getByRole('button', { name: 'Sign, and clear to ship' })).toBeHidden();
  });

  await test.step('the corrective action is asked for in four parts, none of them empty', async () => {
    await signedIn(kitchen.operator);
    await page.goto(`/lots/${lot.lotId}`);
    await page.getByRole('region', { name: 'Day sheet', exact: true }).getByRole('link', { name: 'Record the corrective action' }).click();
    await page.getByRole('button', { name: 'Record the corrective action' }).click();
    const dialog = page.getByRole('dialog', { name: 'Corrective action' });
    await dialog.getByRole('button', { name: 'Next' }).click();
    await expect(dialog.getByText('Write it in a few words.')).toBeVisible();
    for (const [i, [label = '', words = '']] of parts.entries()) {
      await dialog.getByRole('textbox', { name: label }).fill(words);
      const then = parts[i + 1]?.[0];
      if (then) await tapOnTo(dialog.getByRole('textbox', { name: then }), dialog.getByRole('button', { name: 'Next' }));
    }
    await tapOnTo(dialog.getByText('Saved.'), dialog.getByRole('button', { name: 'Save' }));
    await dialog.getByRole('button', { name: 'Done' }).click();
    for (const [, words = ''] of parts) await expect(page.getByText(words)).toBeVisible();
    await expect(page.getByText('The owner or a reviewer decides what becomes of the product.')).toBeVisible();
  });

  await test.step('the reviewer decides what becomes of it, and closes it', async () => {
    await signedIn(kitchen.reviewer);
    await page.goto(`/lots/${lot.lotId}/review`);
    await page.getByRole('link', { name: 'Open its deviation' }).click();
    await page.getByRole('button', { name: 'Decide' }).click();
    await page.getByRole('button', { name: /^Condemn/ }).click();
    await keyIn(page, 'Or a part of it', '2.8', 'Next');
    await page.getByRole('textbox', { name: 'Why?' }).fill('Two packages had stood beside the door.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('button', { name: 'Done' }).click();
    const decided = page.getByRole('region', { name: 'What becomes of the product' });
    await expect(decided.getByText('8.755 kg of 10.025 kg still to decide')).toBeVisible();
    await expect(decided.getByText('2.8 lb condemned')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Close the deviation' })).toBeHidden();

    await page.getByRole('button', { name: 'Decide' }).click();
    await page.getByRole('button', { name: /^Release/ }).click();
    await tapOnTo(page.getByRole('button', { name: /^Test result/ }), page.getByRole('button', { name: 'All of it: 8.755 kg' }));
    await page.getByRole('button', { name: /^Test result/ }).click();
    await page.getByRole('textbox', { name: 'Why?' }).fill('Surface and core read at once: 39 °F, never above for more than ten minutes.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('button', { name: 'Done' }).click();
    await expect(decided.getByText('All of it is decided')).toBeVisible();
    await page.getByRole('button', { name: 'Close the deviation' }).click();
    await page.getByRole('button', { name: 'Close it, under my name' }).click();
    await page.getByRole('button', { name: 'Done' }).click();
    await expect(page.getByRole('region', { name: 'Closed' })).toBeVisible();
  });

  await test.step('what was condemned stands on the sheet of the day until its destruction is recorded', async () => {
    await signedIn(kitchen.operator);
    await page.goto('/');
    const sheet = page.getByRole('region', { name: 'The shop today' });
    await expect(sheet.getByRole('heading', { name: /^Condemned, to be destroyed/ })).toBeVisible();
    await sheet.getByRole('link', { name: `2.8 lb of ${lot.code}` }).click();
    await expect(page.getByText('Not destroyed yet: keep it apart.')).toBeVisible();
    await page.getByRole('button', { name: 'Record its destruction' }).click();
    await page.getByRole('textbox', { name: 'How was it destroyed?' }).fill('Dyed green, in the locked barrel.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('button', { name: 'Done' }).click();
    await expect(page.getByText('Dyed green, in the locked barrel.')).toBeVisible();
    await expect(page.getByText('Not destroyed yet: keep it apart.')).toBeHidden();
  });

  await test.step('who made its records may still not sign for it', async () => {
    await signedIn(shop.owner);
    await page.goto(`/lots/${lot.lotId}/review`);
    await expect(page.getByText('Waiting for a signature')).toBeVisible();
    await expect(page.getByText(new RegExp(`Records of this lot were made by .*${shop.owner.name}`))).toBeVisible();
    await expect(page.getByRole('button', { name: 'Sign, and clear to ship' })).toBeHidden();
  });

  await test.step('somebody else signs, and the packages may ship', async () => {
    await signedIn(kitchen.reviewer);
    await page.goto(`/lots/${lot.lotId}/review`);
    await page.getByRole('button', { name: 'Sign, and clear to ship' }).click();
    await expect(page.getByText(`by ${kitchen.reviewer.name}`)).toBeVisible();
    await page.goto('/shipping');
    await expect(page.getByRole('row').filter({ hasText: lot.code }).getByText('May ship')).toBeVisible();
  });
});

test('degrees of the other scale are asked about, and kept as they were meant', async ({ page, kitchen, aLot, signedIn }) => {
  const lot = await aLot('chilled');
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lot.lotId}`);
  await recordAt(page, 'Cold room');
  await page.getByRole('radio', { name: '°C' }).check({ force: true });
  await keyIn(page, 'Temperature', '38.5');
  await expect(page.getByText('38.5 °C is unusual here.')).toBeVisible();
  expect(
    (await kitchen.showLot(lot.lotId)).controlPoints.flatMap(({ readings }) => readings.map(({ entered }) => entered)),
  ).not.toContainEqual({ value: 38.5, unit: '°C' });
  await page.getByRole('button', { name: 'It was 38.5 °F' }).click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('dialog').getByText('Saved.', { exact: true })).toBeVisible();
  await expect(page.getByRole('dialog').getByText('Met', { exact: true })).toBeVisible();
});

test('a double tap on Keep lands once', async ({ page, kitchen, aLot, signedIn }) => {
  const lot = await aLot('cooked');
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lot.lotId}`);
  await recordAt(page, 'Chill');
  await page.getByRole('textbox', { name: 'Temperature' }).fill('141');
  await page.getByRole('button', { name: 'Save', exact: true }).dblclick();
  await expect(page.getByRole('dialog').getByText('Saved.', { exact: true })).toBeVisible();
  await expect(page.getByText('All in the book')).toBeAttached();
  const { controlPoints } = await kitchen.showLot(lot.lotId);
  expect(
    controlPoints.flatMap(({ readings }) => readings).filter(({ entered }) => 'value' in entered && entered.value === 141),
  ).toHaveLength(1);
});

test('two people record on one lot at once, and each sees both', async ({ page, shop, kitchen, aLot, signedIn, anotherTablet }) => {
  const lot = await aLot('chilled');
  await signedIn(kitchen.operator);
  const tablets = [page, await anotherTablet(shop.owner)];
  for (const [i, tablet] of tablets.entries()) {
    await tablet.goto(`/lots/${lot.lotId}`);
    await recordAt(tablet, 'Cold room');
    await tablet.getByRole('textbox', { name: 'Temperature' }).fill(['36.1', '36.2'][i] ?? '');
  }
  await Promise.all(tablets.map((tablet) => tablet.getByRole('button', { name: 'Save', exact: true }).click()));
  for (const tablet of tablets) await expect(tablet.getByRole('dialog').getByText('Saved.', { exact: true })).toBeVisible();
  for (const tablet of tablets) {
    await tablet.reload();
    const sheet = tablet.getByRole('region', { name: `Day sheet of lot ${lot.code}` });
    await expect(sheet.getByText('36.1 °F', { exact: true })).toBeVisible();
    await expect(sheet.getByText('36.2 °F', { exact: true })).toBeVisible();
  }
});
