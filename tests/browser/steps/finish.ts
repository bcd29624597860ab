import { expect, type Page } from '@playwright/test';
import { doNext } from './do-next';
import { speaking } from './words';

/** Says that a stage is over, once its limits are met and the lot's page offers it. */
export async function finish(page: Page, stage: string, speaks = speaking('en')): Promise<void> {
  const say = speaks('lots');
  await doNext(page, say('has-reached', { point: stage }), say('it-is-finished'));
  await page
    .getByRole('dialog')
    .getByRole('button', { name: say('it-is-finished') })
    .click();
  await expect(page.getByText(speaks('day-sheet')('finished', { point: stage }), { exact: true })).toBeVisible();
}
