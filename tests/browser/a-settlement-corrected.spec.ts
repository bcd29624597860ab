import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import type { SausageKitchen } from '../builders/a-sausage-kitchen';
import { settle } from '../builders/a-settlement';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { expect, test } from '../support/in-a-browser';
import { tapOnTo } from './steps/tap-on-to';

test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true });

/** A deviation on this lot, with its corrective action, all of it released, closed. */
async function aClosed({ operator, reviewer }: SausageKitchen, lotId: string): Promise<string> {
  const [deviationId, takenAt] = [v7(), new Date().toISOString()];
  await done(ask(operator, contract.openDeviation, { deviationId, lotId, description: 'A glove tip is missing.', takenAt }));
  await settle(reviewer, deviationId, takenAt);
  return deviationId;
}

test('a corrective action is corrected: the words before stay, struck through, with reason and name', async ({
  page,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { lotId } = await aLot('cured');
  const deviationId = await aClosed(kitchen, lotId);
  await signedIn(kitchen.operator);
  await page.goto(`/deviations/${deviationId}`);
  await page.getByRole('button', { name: 'Correct', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Typed wrongly' }).click();
  const first = dialog.getByRole('textbox').first();
  await expect(first).toHaveValue('Tagged, in the walk-in.');
  await first.fill('Tagged, in the freezer.');
  for (let asked = 1; asked < 5; asked++) {
    await tapOnTo(dialog.getByText(new RegExp(`^${asked + 1} of 5`)), dialog.getByRole('button', { name: 'Next' }));
  }
  await tapOnTo(dialog.getByText('Saved.'), dialog.getByRole('button', { name: 'Save' }));
  await dialog.getByRole('button', { name: 'Done' }).click();
  const before = page.getByRole('region', { name: 'Corrective action before' });
  await expect(before.locator('s', { hasText: 'Tagged, in the walk-in.' })).toBeVisible();
  await expect(before).toContainText('Corrected: Typed wrongly');
  await expect(before).toContainText(kitchen.operator.name);
  await expect(page.getByRole('region', { name: 'Corrective action', exact: true })).toContainText('Tagged, in the freezer.');
});

test('a closing is taken back: the deviation is open again, its lot on hold; an operator may not', async ({
  page,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { lotId } = await aLot('cured');
  const deviationId = await aClosed(kitchen, lotId);
  await signedIn(kitchen.operator);
  await page.goto(`/deviations/${deviationId}`);
  await expect(page.getByRole('region', { name: 'Closed' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Take the closing back' })).toHaveCount(0);
  await signedIn(kitchen.reviewer);
  await page.goto(`/deviations/${deviationId}`);
  await page.getByRole('button', { name: 'Take the closing back' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Too early' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await expect(page.getByRole('region', { name: 'Was closed' })).toContainText('Taken back: Too early');
  await expect(page.getByRole('button', { name: 'Close the deviation' })).toBeVisible();
  await page.goto(`/lots/${lotId}`);
  await expect(page.getByText('On hold', { exact: true }).first()).toBeVisible();
});

test('a decision is corrected in one go: the old one stays, struck through, and the rest is to decide', async ({
  page,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { lotId } = await aLot('cured');
  const deviationId = await aClosed(kitchen, lotId);
  await signedIn(kitchen.reviewer);
  await page.goto(`/deviations/${deviationId}`);
  const decided = page.getByRole('region', { name: 'What becomes of the product' });
  await decided.getByRole('button', { name: 'Correct this decision' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Typed wrongly' }).click();
  await dialog.getByRole('button', { name: /^Condemn/ }).click();
  await tapOnTo(dialog.getByRole('textbox', { name: 'Why?' }), dialog.getByRole('button', { name: 'All of it: 10.025 kg' }));
  await dialog.getByRole('textbox', { name: 'Why?' }).fill('Glove tip found in it.');
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await expect(decided.locator('s', { hasText: '10.025 kg released' })).toBeVisible();
  await expect(decided).toContainText('Corrected: Typed wrongly');
  await expect(decided).toContainText('10.025 kg condemned');
  await expect(decided).toContainText('All of it is decided');
});

test('a review is taken back by its signer: the lot may not ship, and the page says why', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('reviewed');
  await signedIn(kitchen.reviewer);
  await page.goto(`/lots/${lotId}/review`);
  await page.getByRole('button', { name: 'Take the signature back' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Something was overlooked' }).click();
  await expect(page.getByText(`${kitchen.reviewer.name} took that back: Something was overlooked`)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Sign, and clear to ship' })).toBeVisible();
  await page.goto(`/lots/${lotId}`);
  await expect(page.getByText('The review was taken back: Something was overlooked. Next: review it again.')).toBeVisible();
});

test('packages packed after the review are named in one line with one button, and may not ship', async ({
  page,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { lotId, code } = await aLot('reviewed');
  const takenAt = new Date().toISOString();
  await done(ask(kitchen.operator, contract.packLot, { packingId: v7(), lotId, count: 2, net: { value: 100, unit: 'g' }, takenAt }));
  await signedIn(kitchen.reviewer);
  await page.goto('/shipping');
  const why = '2 packages were packed after the review was signed and may not ship. Next: review it again.';
  await expect(page.getByText(why).first()).toBeVisible();
  await page.goto(`/lots/${lotId}`);
  await expect(page.getByText(why)).toBeVisible();
  await page.getByRole('region', { name: 'Review before it ships' }).getByRole('link', { name: 'Go to the review' }).click();
  await expect(page.getByText(/2 packages were packed after that and may not ship until the review is signed for them too/)).toBeVisible();
  await page.getByRole('button', { name: 'Sign, and clear to ship' }).click();
  await expect(page.getByText('Signed', { exact: true })).toBeVisible();
  await page.goto('/shipping');
  await expect(page.getByText(code).first()).toBeVisible();
  await expect(page.getByText(why)).toHaveCount(0);
});
