import type { Page } from '@playwright/test';

/** What the lot's page says is next, and the tap that begins it. */
export async function doNext(page: Page, title: string | RegExp, action: string): Promise<void> {
  await page.getByRole('region', { name: title }).getByRole('button', { name: action }).click();
}
