import { expect, type Page } from '@playwright/test';

/** A supplier, a meat and a curing salt, as the owner of a new shop describes them. */
export async function nameWhatComesIn(page: Page): Promise<void> {
  await page.goto('/receiving/suppliers');
  await page.getByRole('button', { name: 'Add a supplier' }).first().click();
  await page.getByLabel('Name').fill('Hollow Holt Meats');
  await page.getByLabel('Establishment number').fill('Est. 00981-X');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('rowheader', { name: 'Hollow Holt Meats' })).toBeVisible();

  await page.getByRole('link', { name: 'Items' }).click();
  await page.getByRole('button', { name: 'Add an item' }).first().click();
  await page.getByLabel('Name').fill('Pork leg');
  await page.getByRole('radio', { name: /^Meat/ }).check();
  await page.getByLabel('Species').selectOption('pork');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('rowheader', { name: 'Pork leg' })).toBeVisible();

  await page.getByRole('button', { name: 'Add an item' }).first().click();
  await page.getByLabel('Name').fill('Curing salt 6.25 %, fine');
  await page.getByRole('radio', { name: /^Ingredient/ }).check();
  await page.getByLabel('Restricted substance in it').selectOption('sodium nitrite');
  await page.getByRole('button', { name: '6.25 %', exact: true }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('rowheader', { name: 'Curing salt 6.25 %, fine' })).toBeVisible();
}
