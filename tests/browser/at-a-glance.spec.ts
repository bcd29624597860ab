import type { Locator } from '@playwright/test';
import { v7 } from 'uuid';
import * as contract from '@larderbook/contracts';
import { done } from '../builders/a-shop';
import { ask } from '../support/ask';
import { expect, test } from '../support/in-a-browser';
import { recordAt } from './steps/record-at';

const minute = 60_000;
const ago = (minutes: number) => new Date(Date.now() - minutes * minute).toISOString();
const widths = [
  [360, 740],
  [768, 1024],
  [1280, 800],
] as const;

test.use({ hasTouch: true, mayLog: /ERR_INTERNET_DISCONNECTED/ });

for (const [width, height] of widths) {
  test(`at ${width} px every answer to a question of the keypad is in sight, and the way back to typing`, async ({
    page,
    kitchen,
    aLot,
    signedIn,
  }) => {
    const { lotId } = await aLot('packed');
    await signedIn(kitchen.operator);
    await page.setViewportSize({ width, height });
    await page.goto(`/lots/${lotId}`);
    await recordAt(page, 'Cold room');
    const dialog = page.getByRole('dialog');
    const display = dialog.getByRole('textbox', { name: 'Temperature' });
    await display.fill('555');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    for (const answer of ['555 °F is right, save it', 'Neither: type it again'])
      await expect(dialog.getByRole('button', { name: answer })).toBeInViewport({ ratio: 1 });
    await expect(dialog.getByRole('button', { name: '7', exact: true })).toBeHidden();
    await dialog.getByRole('button', { name: 'Neither: type it again' }).click();
    await expect(display).toHaveValue('');
    await expect(display).toBeFocused();
    await expect(dialog.getByRole('button', { name: '7', exact: true })).toBeVisible();
  });
}

test('after an entry there is one line, one button and no slip over them; with no signal the slip covers no label', async ({
  page,
  context,
  kitchen,
  aLot,
  signedIn,
}) => {
  const { lotId } = await aLot('packed');
  await signedIn(kitchen.operator);
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Cold room');
  const dialog = page.getByRole('dialog');
  const keep = async (value: string) => {
    await dialog.getByRole('textbox', { name: 'Temperature' }).fill(value);
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  };
  await keep('36.2');
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  await expect(slipOf(dialog)).toHaveCount(0);
  await expect(dialog.getByRole('button')).toHaveText(['Why, and by which limit', 'Done']);
  const [text, quiet] = await Promise.all([
    leftOf(dialog.getByText('Saved.', { exact: true }).locator('..')),
    leftOf(dialog.getByRole('button', { name: /^Why/ })),
  ]);
  expect(quiet).toBe(text);
  await dialog.getByRole('button', { name: 'Done' }).click();

  await context.setOffline(true);
  await recordAt(page, 'Cold room');
  await keep('36.4');
  await expect(dialog.getByText(/^Kept on this device/)).toBeVisible();
  const slip = slipOf(dialog);
  await expect(slip).toBeVisible();
  const label = await dialog.getByText('Cold room 36.4 °F').boundingBox();
  const covered = await slip.boundingBox();
  expect((covered?.y ?? 0) + (covered?.height ?? 0)).toBeLessThanOrEqual(label?.y ?? 0);
  await context.setOffline(false);
});

const slipOf = (dialog: Locator) => dialog.locator('p[aria-hidden=true]').filter({ hasText: /Sent:|Kept|No connection/ });
const leftOf = async (place: Locator) => Math.round((await place.boundingBox())?.x ?? -1);

test('a missed stage is headed so while it cools, on the keypad and after it is kept', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cured');
  const read = (point: 'cook' | 'chill', minutes: number, value: number) =>
    kitchen.read(lotId, point, { entered: { value, unit: '°F' }, takenAt: ago(minutes) });
  for (const [minutes, value] of [
    [230, 120],
    [210, 140],
    [190, 160],
  ] as const)
    await read('cook', minutes, value);
  await done(ask(kitchen.operator, contract.endStage, { stageEndId: v7(), lotId, controlPointId: kitchen.points.cook, takenAt: ago(189) }));
  await read('chill', 180, 140);
  await read('chill', 160, 128);
  await signedIn(kitchen.operator);
  await page.setViewportSize({ width: 768, height: 1024 });
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Chill');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: 'Temperature' }).fill('91.5');
  await expect(dialog.getByText('Missed, still cooling')).toBeVisible();
  await expect(dialog.getByText('Running', { exact: true })).toHaveCount(0);
  await dialog.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(dialog.getByText('Missed, still cooling')).toBeVisible();
  await dialog.getByRole('link', { name: 'Record the corrective action' }).click();
  await expect(page.getByText('Critical limit missed: Chill')).toBeVisible();
});

test('a stage that runs says once what is due by when, and what to do', async ({ page, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('cooked');
  const at = ago(20);
  await kitchen.read(lotId, 'chill', { entered: { value: 140, unit: '°F' }, takenAt: at });
  await kitchen.read(lotId, 'chill', { entered: { value: 128, unit: '°F' }, takenAt: ago(10) });
  await signedIn(kitchen.operator);
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Chill');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox', { name: 'Temperature' }).fill('118.5');
  await expect(dialog.getByRole('status').getByText(/^, 80 °F by .*\d{1,2}:\d\d [ap]m/)).toBeVisible();
  await expect(dialog.getByText(/left at the last reading/)).toHaveCount(0);
  await expect(dialog.getByText(/^Chill on: reach 80 °F within the next/)).toBeVisible();
});
