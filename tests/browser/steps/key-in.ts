import { expect, type Page } from '@playwright/test';
import { speaking } from './words';

/** One number on the keypad's display, and the button that takes it. */
export async function keyIn(page: Page, label: string, figures: string, save = 'Save'): Promise<void> {
  await page.getByRole('textbox', { name: label }).fill(figures);
  await page.getByRole('button', { name: save, exact: true }).click();
}

/** The same with wet hands: key by key, no two the same in a row, which a ghost of wet glass would be. */
export async function tapIn(page: Page, label: string, figures: string, speaks = speaking('en')): Promise<void> {
  const say = speaks('recording');
  const named: Record<string, string> = { '.': say('decimal-point'), '-': say('minus') };
  const display = page.getByRole('textbox', { name: label });
  for (const [i, figure] of [...figures].entries()) {
    await page.getByRole('button', { name: named[figure] ?? figure, exact: true }).click();
    await expect(display).toHaveValue(figures.slice(0, i + 1));
  }
  await page.getByRole('button', { name: speaks('shared')('save'), exact: true }).click();
}
