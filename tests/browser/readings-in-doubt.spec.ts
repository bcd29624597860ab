import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { done } from '../builders/a-shop';
import type { SausageKitchen } from '../builders/a-sausage-kitchen';
import { ask } from '../support/ask';
import { expect, test, type LotMade } from '../support/in-a-browser';
import { readPaper } from './steps/read-paper';

test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true, mayLog: /ERR_INTERNET_DISCONNECTED/ });

const minute = 60_000;

/** A chill in which the probe lay in the air for a minute: a fall that no piece makes. */
async function chillInDoubt(kitchen: SausageKitchen, { lotId }: LotMade): Promise<void> {
  const [, cook] = (await kitchen.showLot(lotId)).controlPoints;
  const start = Date.parse(cook?.endedAt ?? '');
  const at = (minutes: number) => new Date(start + minutes * minute).toISOString();
  const read = [
    [0, 140],
    [30, 100],
    [60, 78],
    [61, 37],
    [120, 50],
    [200, 39],
  ] as const;
  for (const [minutes, value] of read) {
    await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' }, takenAt: at(minutes), sure: true });
  }
  const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points.chill, takenAt: at(201) };
  await done(ask(kitchen.operator, contract.endStage, end));
}

test.describe('a chill with a reading that no core can have made', () => {
  let lot: LotMade;
  test.beforeEach(async ({ page, kitchen, aLot, signedIn }) => {
    lot = await aLot('cooked');
    await chillInDoubt(kitchen, lot);
    await signedIn(kitchen.operator);
    await page.goto(`/lots/${lot.lotId}`);
  });

  test('is met once a person says on the lot what the reading was, and stays on sheet, review and paper', async ({
    page,
    shop,
    signedIn,
  }) => {
    const doubt = page.getByRole('region', { name: 'In doubt' });
    await expect(doubt).toContainText('Chill. Falls faster than the core of the piece can');
    await doubt.getByRole('button', { name: 'Say what this reading was' }).tap();
    const dialog = page.getByRole('dialog');
    await expect(dialog.getByRole('checkbox', { name: /^37 °F Taken/ })).toBeChecked();
    await expect(dialog.getByRole('radio', { name: /^Not of the core/ })).toBeChecked();
    await dialog.getByRole('button', { name: 'Save' }).tap();
    await expect(dialog.getByText('Say why.')).toBeVisible();
    const usual = dialog.getByRole('button', { name: 'The probe was out of the product' });
    expect((await usual.boundingBox())?.height).toBeGreaterThanOrEqual(48);
    await usual.tap();
    await expect(dialog.getByText('Met', { exact: true })).toBeVisible();
    await dialog.getByRole('button', { name: 'Save' }).tap();
    await expect(dialog.getByText('Saved.')).toBeVisible();
    await expect(dialog.getByText('Met', { exact: true })).toBeVisible();
    await dialog.getByRole('button', { name: 'Done' }).tap();

    await expect(doubt).toBeHidden();
    const sheet = page.getByRole('region', { name: `Day sheet of lot ${lot.code}` });
    await expect(sheet.locator('s', { hasText: '37 °F' })).toBeVisible();
    await expect(sheet.getByText(/^Not of the core, says .*: The probe was out of the product$/)).toBeVisible();
    expect(await readPaper(page, page.getByRole('link', { name: 'On paper', exact: true }))).toContain(
      'Clarified: not of the core. The probe was out of the product',
    );

    await signedIn(shop.reviewer);
    await page.goto(`/lots/${lot.lotId}/review`);
    const entries = page.getByRole('table', { name: 'Corrected, clarified and flagged entries' });
    await expect(entries.getByRole('row', { name: /^Reading at Chill: 37 °F/ })).toContainText('Not of the core');
  });

  test('without a signal what is said is kept on the device; on the page of how it was judged it is taken back', async ({
    page,
    context,
    kitchen,
  }) => {
    await page.getByRole('link', { name: 'How this was judged: Chill', exact: true }).tap();
    // The lot's page has the same button, and stays until the next one is there.
    await expect(page.getByRole('heading', { level: 1, name: 'How Chill was judged' })).toBeVisible();
    const doubt = page.getByRole('region', { name: 'In doubt' });
    await doubt.getByRole('button', { name: 'Say what this reading was' }).tap();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('textbox', { name: 'Reason' }).fill('Fell on the floor.');
    await context.setOffline(true);
    await dialog.getByRole('button', { name: 'Save' }).tap();
    await expect(dialog.getByText(/^Kept on this device\./)).toBeVisible();
    await dialog.getByRole('button', { name: 'Done' }).tap();
    await context.setOffline(false);

    const said = page.getByRole('table', { name: 'What was said of the readings' });
    await expect(said.getByRole('row', { name: /^37 °F/ })).toContainText('Fell on the floor.');
    await expect(doubt).toBeHidden();
    await said.getByRole('button', { name: 'Take back' }).tap();
    await expect(dialog.getByText('Said so far: Not of the core. Fell on the floor.')).toBeVisible();
    await dialog.getByRole('button', { name: 'Said of the wrong reading' }).tap();
    await dialog.getByRole('button', { name: 'Save' }).tap();
    await expect(dialog.getByText('Saved.')).toBeVisible();
    await dialog.getByRole('button', { name: 'Done' }).tap();
    await expect(doubt).toContainText('Falls faster than the core of the piece can');
    await expect(said.getByRole('row')).toHaveCount(3);
    expect((await kitchen.showLot(lot.lotId)).controlPoints[2]?.stands).toBe('undetermined');
  });
});

test('an inspector sees the doubt and may say nothing about it', async ({ page, kitchen, shop, aLot, signedIn }) => {
  const lot = await aLot('cooked');
  await chillInDoubt(kitchen, lot);
  await signedIn(await shop.hire('inspector'));
  await page.goto(`/lots/${lot.lotId}`);
  const doubt = page.getByRole('region', { name: 'In doubt' });
  await expect(doubt).toContainText('Falls faster than the core of the piece can');
  await expect(doubt.getByRole('button')).toHaveCount(0);
});

test('a deviation lists what was said of the readings at its control point: what, why, who and when', async ({
  page,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { lotId, ...lot } = await aLot('cooked');
  await chillInDoubt(kitchen, { lotId, ...lot });
  const controlPointId = kitchen.points.chill;
  const chill = (await kitchen.showLot(lotId)).controlPoints.find((one) => one.controlPoint.controlPointId === controlPointId);
  const readingIds =
    chill?.readings.flatMap(({ readingId, entered }) => ('value' in entered && entered.value === 37 ? readingId : [])) ?? [];
  const [deviationId, takenAt] = [v7(), new Date().toISOString()];
  await done(
    ask(kitchen.operator, contract.openDeviation, { deviationId, lotId, controlPointId, description: 'The chiller stood open.', takenAt }),
  );
  await signedIn(kitchen.operator);
  await page.goto(`/deviations/${deviationId}`);
  const said = page.getByRole('table', { name: 'What was said of the readings' });
  await expect(page.getByText('The chiller stood open.').first()).toBeVisible();
  await expect(said).toBeHidden();

  const words = { word: 'not of the core', reason: 'The probe lay in the air.' } as const;
  await done(
    ask(kitchen.operator, contract.clarifyReadings, { clarificationId: v7(), lotId, controlPointId, readingIds, takenAt, ...words }),
  );
  await page.reload();
  const row = said.getByRole('row', { name: /^37 °F/ });
  await expect(row).toContainText('not of the core');
  await expect(row).toContainText('The probe lay in the air.');
  await expect(row).toContainText(kitchen.operator.name);
  await page.getByRole('link', { name: 'How it was judged' }).click();
  await page.waitForURL(/\/explanations\//);
});
