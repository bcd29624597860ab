import { expect, type Page } from '@playwright/test';
import { doNext } from './do-next';

/** Says that a stage is over, once its limits are met and the lot's page offers it. */
export async function finish(page: Page, stage: string): Promise<void> {
  await doNext(page, `${stage} has reached what it needs`, 'It is finished');
  await page.getByRole('dialog').getByRole('button', { name: 'It is finished' }).click();
  const sheet = page.getByRole('region', { name: /^Day sheet of lot/ });
  await expect(sheet.getByText(`${stage} finished`, { exact: true })).toBeVisible();
}
