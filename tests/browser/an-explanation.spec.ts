import { expect, test } from '../support/in-a-browser';

test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true });

test('from a lot to how its chill was judged: verdict, drawing, working, and back', async ({ page, shop, aLot, signedIn }) => {
  const { lotId, code } = await aLot('chilled');
  await signedIn(shop.operator);
  await page.goto(`/lots/${lotId}`);
  const link = page.getByRole('link', { name: 'How this was judged: Chill', exact: true });
  expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  await link.tap();

  await expect(page.getByRole('heading', { name: 'How Chill was judged', level: 1 })).toBeVisible();
  await expect(page.getByText('Met', { exact: true }).first()).toBeVisible();
  const figure = page.getByRole('figure', { name: 'Chill: temperature' });
  await expect(figure).toContainText('5 readings from 140 °F to 39 °F');
  await expect(figure.getByText('130 °F', { exact: true })).toBeVisible();
  await expect(figure.getByText('passed between these two readings')).toBeVisible();

  const worked = page.getByRole('table', { name: /^Working of 130 → 80 °F/ });
  await expect(worked).toContainText('× 20 min ÷ (100 °F − 140 °F)');
  await expect(page.getByRole('table', { name: /^Records that/ })).toContainText('the last at or above 130 °F');
  await expect(page.getByText(/No gap, no impossible jump/)).toBeVisible();
  await expect(page.getByText('A screening, never a verdict')).toBeVisible();

  await page.getByRole('link', { name: `Lot ${code}` }).tap();
  await expect(page.getByRole('heading', { name: new RegExp(code), level: 1 })).toBeVisible();
});

test('the drawing can be read as tables', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('chilled');
  await signedIn(shop.operator);
  await page.goto(`/lots/${lotId}/explanations/${kitchen.points.chill}`);
  await page.getByText('Stages and crossings as a table').tap();
  await expect(page.getByRole('row', { name: /^Passes 80 °F/ })).toBeVisible();
  await page.getByText('5 readings as a table').tap();
  await expect(page.getByRole('table', { name: /: readings$/ }).getByRole('row')).toHaveCount(6);
});

test('a cook shows its lethality as support, by its set; a cure its weighings', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cooked');
  await signedIn(shop.reviewer);
  await page.goto(`/lots/${lotId}/explanations/${kitchen.points.cook}`);
  await expect(page.getByText('Support for a decision: needs a process authority')).toBeVisible();
  const lethality = page.getByRole('table', { name: 'Lethality by set' });
  await expect(lethality).toContainText('more than 12 log₁₀ (Salmonella, by the meat table');
  await expect(page.getByRole('table', { name: 'Found in the readings' })).toContainText('Gap without a reading');
  await page.goto(`/lots/${lotId}/explanations/${kitchen.points.cure}`);
  await expect(page.getByText('25 g × 6.25 %')).toBeVisible();
  await expect(page.getByText(/Curing salts are toxic in excess/)).toBeVisible();
});

test('what is not recorded yet says what will be asked', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cured');
  await signedIn(shop.operator);
  await page.goto(`/lots/${lotId}/explanations/${kitchen.points.label}`);
  await expect(page.getByText('Nothing is recorded here yet')).toBeVisible();
  await expect(page.getByText(/The label is the one approved for this product/)).toBeVisible();
});
