import type { Page } from '@playwright/test';

/** One of a few from a list, one of many by its name: how many there are depends on the tests that were here before. */
export async function choose(page: Page, label: string, name: string): Promise<void> {
  const few = page.getByRole('combobox', { name: label, exact: true });
  const many = page.getByRole('button', { name: `${label}: ` });
  await few.or(many).waitFor();
  if (await few.isVisible()) return void (await few.selectOption({ label: name }));
  await many.click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('searchbox').fill(name);
  await dialog.getByRole('button', { name, exact: true }).click();
}
