import { expect, type Locator } from '@playwright/test';

/**
 * Taps a button that goes on to the next question, until that is there: a second tap on the same button within four
 * tenths of a second is taken for the wet glass's own, and a test is quicker than any hand.
 */
export async function tapOnTo(question: Locator, button: Locator): Promise<void> {
  await expect(async () => {
    if (!(await question.isVisible())) await button.click({ timeout: 1_000 });
    await expect(question).toBeVisible({ timeout: 500 });
  }).toPass();
}
