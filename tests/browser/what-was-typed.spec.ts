import { anIngredient, anItem } from '../builders/an-item';
import { expect, test } from '../support/in-a-browser';
import { keyIn } from './steps/key-in';
import { recordAt } from './steps/record-at';

test('Escape closes what lies on top alone: what was typed under it stays', async ({ page, shop, kitchen, signedIn }) => {
  const receiptId = await kitchen.receive('pork');
  for (let i = 0; i < 9; i++) await anItem(shop.operator, { name: `Cut ${i}` });
  await signedIn(shop.owner);
  await page.goto(`/receiving/${receiptId}`);
  await page.getByRole('button', { name: 'Correct', exact: true }).click();
  const correction = page.getByRole('dialog', { name: /^Correct delivery/ });
  await correction.getByLabel('Why is it corrected?').fill('Read the wrong scale.');
  await correction.getByRole('button', { name: 'Item: ' }).click();
  const finding = page.getByRole('dialog', { name: 'Item', exact: true });
  await expect(finding).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(finding).toBeHidden();
  await expect(correction.getByLabel('Why is it corrected?')).toHaveValue('Read the wrong scale.');
  await page.keyboard.press('Escape');
  await expect(correction).toBeHidden();
});

test('a time is typed figure by figure beside the keypad, and half a time is not recorded', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('chilled');
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Cold room');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Just now' }).click();
  const when = dialog.getByLabel('When was it?');
  const today = (await when.inputValue()).slice(0, 10);
  const [year = '', month = '', day = ''] = today.split('-');
  await when.focus();
  await page.keyboard.press('Backspace');
  await expect(when).toHaveValue('');
  await keyIn(page, 'Temperature', '37.5');
  await expect(dialog.getByText('Give the date and time.')).toBeVisible();
  await when.focus();
  await page.keyboard.type(`${month}${day}${year}`);
  await page.keyboard.press('Tab');
  await page.keyboard.type('1201AM');
  await expect(when).toHaveValue(`${today}T00:01`);
  await expect(dialog.getByRole('button', { name: 'At 12:01 am' })).toBeVisible();
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  const { controlPoints } = await kitchen.showLot(lotId);
  const [reading] = controlPoints.flatMap(({ controlPoint, readings }) => (controlPoint.name === 'Cold room' ? readings : []));
  expect(Date.parse(reading?.made.at ?? '')).toBe(Date.parse(`${today}T00:01:00-06:00`));
});

test('more meat is put in now, whatever the time of what went in before', async ({ page, kitchen, signedIn }) => {
  await kitchen.receive('pork');
  const { lotId } = await kitchen.startLot();
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  const dialog = page.getByRole('dialog');
  const choose = () =>
    dialog
      .getByRole('list', { name: /^Deliveries/ })
      .getByRole('button')
      .first()
      .click();
  await page.getByRole('button', { name: 'Put in meat' }).last().click();
  await choose();
  await dialog.getByRole('button', { name: 'Just now' }).click();
  const when = dialog.getByLabel('When was it?');
  await when.fill(`${(await when.inputValue()).slice(0, 10)}T00:01`);
  await keyIn(page, 'Weight taken, before trimming', '10', 'Next: after trimming');
  await dialog.getByRole('button', { name: 'Nothing was trimmed' }).click();
  await dialog.getByRole('button', { name: 'More meat' }).click();
  await choose();
  await expect(dialog.getByRole('button', { name: 'Just now' })).toBeVisible();
});

test('the time a delivery came at, and the reason, outlive a step back', async ({ page, shop, kitchen, signedIn }) => {
  await anIngredient(shop.operator, { name: 'Marjoram, rubbed' });
  await signedIn(kitchen.operator);
  await page.goto('/receiving/new');
  await page.getByRole('button', { name: 'Marjoram, rubbed' }).click();
  await page.getByRole('button', { name: 'Marlow Packing' }).click();
  await page.getByLabel('Supplier’s lot').fill('MJ-7');
  await page.getByRole('button', { name: 'Next' }).click();
  await keyIn(page, 'Weight', '4', 'Next');
  await page.getByRole('button', { name: 'just now' }).click();
  const when = page.getByLabel('When did it come?');
  await when.fill(`${(await when.inputValue()).slice(0, 10)}T00:01`);
  await page.getByRole('button', { name: 'Refuse…' }).click();
  await page.getByLabel('Why is it refused?').fill('The bag is torn.');
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.getByRole('button', { name: 'at 12:01 am' })).toBeVisible();
  await page.getByRole('button', { name: 'Refuse…' }).click();
  await expect(page.getByLabel('Why is it refused?')).toHaveValue('The bag is torn.');
});

test('the draft of a formula is thrown away only when asked once more', async ({ page, shop, kitchen, signedIn }) => {
  await signedIn(shop.owner);
  await page.goto(`/products/${kitchen.productId}/formula`);
  await page.getByLabel('Expected yield').fill('77');
  await page.getByRole('button', { name: 'Throw the draft away…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByLabel('Expected yield')).toHaveValue('77');
  await page.getByRole('button', { name: 'Throw the draft away…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Throw it away' }).click();
  await expect(page.getByRole('heading', { name: 'Smoked sausage', level: 1 })).toBeVisible();
});
