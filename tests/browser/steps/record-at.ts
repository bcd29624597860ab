import type { Page } from '@playwright/test';

/** Opens the keypad of a control point from its tile on the lot's page. */
export async function recordAt(page: Page, controlPoint: string): Promise<void> {
  await page
    .getByRole('list', { name: 'Control points' })
    .getByRole('button', { name: new RegExp(`^${controlPoint}`) })
    .click();
}
