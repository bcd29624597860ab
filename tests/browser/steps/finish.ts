import { expect, type Page } from '@playwright/test';
import { doNext } from './do-next';
import { around, speaking } from './words';

/** Says that a stage is over, once its limits are met and the lot's page offers it, and finds it on the day sheet. */
export async function finish(page: Page, stage: string, speaks = speaking('en')): Promise<void> {
  const say = speaks('lots');
  await doNext(page, say('has-reached', { point: stage }), say('it-is-finished'));
  await page
    .getByRole('dialog')
    .getByRole('button', { name: say('it-is-finished') })
    .click();
  const sayRows = speaks('day-sheet');
  const sheet = page.getByRole('region', { name: around(sayRows('sheet-of-lot', { code: '…' })) });
  await expect(sheet.getByText(sayRows('finished', { point: stage }), { exact: true })).toBeVisible();
}
