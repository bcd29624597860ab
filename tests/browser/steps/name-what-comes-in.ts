import { expect, type Page } from '@playwright/test';
import type { Speaks } from './words';

export type Goods = { supplier: string; meat: string; salt: string };

/** A supplier, a meat and a curing salt, as the owner of a new shop describes them. */
export async function nameWhatComesIn(page: Page, { supplier, meat, salt }: Goods, speaks: Speaks): Promise<void> {
  const [say, sayShared] = [speaks('items'), speaks('shared')];
  const save = () => page.getByRole('button', { name: sayShared('save') }).click();
  const known = (name: string) => expect(page.getByRole('rowheader', { name }).first()).toBeVisible();
  const name = page.getByLabel(say('name'), { exact: true });

  await page.goto('/receiving/suppliers');
  await page
    .getByRole('button', { name: say('add-supplier') })
    .first()
    .click();
  await name.fill(supplier);
  await page.getByLabel(say('establishment-number')).fill('Est. 00981-X');
  await save();
  await known(supplier);

  await page.getByRole('link', { name: say('items') }).click();
  await page
    .getByRole('button', { name: say('add-item') })
    .first()
    .click();
  await name.fill(meat);
  await page.getByRole('radio', { name: new RegExp(`^${say('kind-meat')}`) }).check();
  await page.getByLabel(say('species')).selectOption('pork');
  await save();
  await known(meat);

  await page
    .getByRole('button', { name: say('add-item') })
    .first()
    .click();
  await name.fill(salt);
  await page.getByRole('radio', { name: new RegExp(`^${say('kind-ingredient')}`) }).check();
  await page.getByLabel(say('restricted-in-it')).selectOption('sodium nitrite');
  await page.getByRole('button', { name: '6.25 %', exact: true }).click();
  await save();
  await known(salt);
}
