import { Readable } from 'node:stream';
import type { Page } from '@playwright/test';
import { readBack, type FoundText } from '../../packages/documents/src/read-back.test-data';
import type { SausageKitchen } from '../builders/a-sausage-kitchen';
import { expect, test } from '../support/in-a-browser';
import { doNext } from './steps/do-next';
import { keyIn } from './steps/key-in';
import { recordAt } from './steps/record-at';

const minute = 60_000;
const ago = (minutes: number) => new Date(Date.now() - minutes * minute).toISOString();

/** A chill half an hour old, still hot. */
async function chilling(kitchen: SausageKitchen, lotId: string): Promise<void> {
  await kitchen.read(lotId, 'chill', { entered: { value: 140, unit: '°F' }, takenAt: ago(60) });
  await kitchen.read(lotId, 'chill', { entered: { value: 115, unit: '°F' }, takenAt: ago(30) });
}

test('a number in the wrong unit is asked about by the course of the curve', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cooked');
  await chilling(kitchen, lotId);
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Chill');
  await keyIn(page, 'Temperature', '38');
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByText('38 °F is unusual here. 38 °F is far from 115 °F, about 30 min before. Which is right?')).toBeVisible();
  await dialog.getByRole('button', { name: 'It was 38 °C' }).click();
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  await dialog.getByRole('button', { name: 'Another reading' }).click();
  await keyIn(page, 'Temperature', '37');
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
});

test('a fall that no core of the piece can make is asked about, and nothing odd is proposed', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cooked');
  for (const [minutes, value] of [
    [90, 140],
    [60, 100],
    [1, 78],
  ] as const) {
    await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' }, takenAt: ago(minutes) });
  }
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Chill');
  await keyIn(page, 'Temperature', '37');
  const dialog = page.getByRole('dialog');
  await expect(
    dialog.getByText(/^37 °F is unusual here. 37 °F falls faster than the core of the piece can: 78 °F, .+ before. Which is right\?$/),
  ).toBeVisible();
  await expect(dialog.getByRole('button', { name: /^It was/ })).toHaveCount(0);
  await dialog.getByRole('button', { name: '37 °F is right, save it' }).click();
  await expect(dialog.getByText('outside the plausible range, confirmed by the person')).toBeVisible();
});

test('a person who is sure has it kept, and it is flagged', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cooked');
  await chilling(kitchen, lotId);
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Chill');
  await keyIn(page, 'Temperature', '38');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: '38 °F is right, save it' }).click();
  await expect(dialog.getByText('outside the plausible range, confirmed by the person')).toBeVisible();
});

test('target, pad and usual stand in one unit, and grams beside a target in pounds are asked about', async ({
  page,
  kitchen,
  signedIn,
}) => {
  const { lotId } = await kitchen.startLot({ takenAt: ago(20) });
  await kitchen.putIn(lotId, { weight: { value: 30.05, unit: 'kg' }, takenAt: ago(10) });
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  await doNext(page, 'Weigh: Salt', 'Weigh');
  const dialog = page.getByRole('dialog', { name: 'Salt' });
  await expect(dialog.getByRole('textbox', { name: 'Weight, target 1.06 lb' })).toBeVisible();
  await expect(dialog.getByText('0.848 to 1.27 lb')).toBeVisible();
  await dialog.getByRole('radio', { name: 'g', exact: true }).check({ force: true });
  await expect(dialog.getByText('385 to 577 g')).toBeVisible();
  await keyIn(page, 'Weight, target 480.8 g', '1.06');
  await expect(dialog.getByText('1.06 g is unusual here. 1.06 lb is to be weighed. Which is right?')).toBeVisible();
  await dialog.getByRole('button', { name: 'It was 1.06 lb' }).click();
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  expect((await kitchen.showLot(lotId)).weighings).toMatchObject([{ weight: { value: 1.06, unit: 'lb' }, flags: [] }]);
});

for (const [width, height] of [
  [360, 740],
  [768, 1024],
  [1280, 800],
] as const) {
  test(`at ${width} px the number is whole, and its verdict and the keys are in sight at once`, async ({
    page,
    kitchen,
    aLot,
    signedIn,
  }) => {
    const { lotId } = await aLot('cooked');
    await chilling(kitchen, lotId);
    await signedIn(kitchen.operator);
    await page.setViewportSize({ width, height });
    await page.goto(`/lots/${lotId}`);
    await recordAt(page, 'Chill');
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('textbox', { name: 'Temperature' }).fill('155.4');
    await isWhole(page, 'Temperature');
    for (const inSight of [
      dialog.getByRole('textbox', { name: 'Temperature' }),
      dialog.getByRole('status').filter({ hasText: /\w/ }).first(),
      dialog.getByRole('button', { name: '0', exact: true }),
      dialog.getByRole('button', { name: 'Save', exact: true }),
    ]) {
      await expect(inSight).toBeInViewport({ ratio: 1 });
    }
    await dialog.getByRole('textbox', { name: 'Temperature' }).fill('-1234.5');
    await isWhole(page, 'Temperature');
    await dialog.getByRole('button', { name: 'Cancel' }).click();

    await recordAt(page, 'Cure');
    await dialog.getByRole('textbox', { name: /^Weight/ }).fill('459.9');
    await isWhole(page, /^Weight/);
  });
}

/** No figure of what was typed lies outside the display. */
async function isWhole(page: Page, label: string | RegExp): Promise<void> {
  const widths = await page
    .getByRole('dialog')
    .getByRole('textbox', { name: label })
    .evaluate((display) => ({ text: display.scrollWidth, room: display.clientWidth }));
  expect(widths.text).toBeLessThanOrEqual(widths.room);
}

for (const format of ['A4', 'Letter'] as const) {
  test(`the weighing sheet prints on one page of ${format}`, async ({ page, kitchen, signedIn }) => {
    await signedIn(kitchen.operator);
    await page.goto(`/products/${kitchen.productId}/batch`);
    await page.getByRole('textbox', { name: 'Trimmed meat' }).fill('50');
    await page.getByRole('button', { name: 'Calculate' }).click();
    await expect(page.getByRole('button', { name: 'Print', exact: true })).toBeVisible();
    const room = { top: '12mm', right: '12mm', bottom: '12mm', left: '12mm' };
    const { pages, title } = await readBack(Readable.from([await page.pdf({ format, margin: room })]));
    expect(title).toMatch(/^Smoked sausage weighing sheet \d{4}-\d\d-\d\d$/);
    await expect(page).toHaveTitle('Calculate a batch · Larderbook');
    expect(pages).toHaveLength(1);
    const [sheet] = pages;
    for (const said of ['Smoked sausage', 'Calculated', 'Salt', 'Curing salt 6.25 %', 'Least', 'Most', 'Weighed', 'Initials', 'Made on']) {
      expect(sheet?.text).toContain(said);
    }
    expect(overprinted(sheet?.items ?? [])).toEqual([]);
    for (const { x, width } of sheet?.items ?? []) {
      expect(x).toBeGreaterThan(0);
      expect(x + width).toBeLessThan(sheet?.width ?? 0);
    }
  });
}

/** Pairs of texts that lie on one another: closer than two lines of the smallest type are, and side by side. */
const overprinted = (items: FoundText[]): string[] =>
  items.flatMap((one, i) =>
    items.slice(i + 1).flatMap((other) => {
      const isOnOneLine = Math.abs(one.y - other.y) < 6;
      const shared = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
      return isOnOneLine && shared > 0.5 ? [`${one.text} | ${other.text}`] : [];
    }),
  );
