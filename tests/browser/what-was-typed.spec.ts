import { anItem } from '../builders/an-item';
import { expect, test } from '../support/in-a-browser';

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
