import type { Page } from '@playwright/test';
import { anOwner } from '../../builders/a-shop';
import { tapOnTo } from './tap-on-to';

const { name, userName, password } = anOwner();

/** From the first page to Today, one group of questions after the other. */
export async function setUpMyShop(page: Page): Promise<void> {
  const goOnTo = (question: string) => tapOnTo(page.getByRole('heading', { name: question }), page.getByRole('button', { name: 'Next' }));
  await page.getByRole('link', { name: 'Set up my shop' }).click();

  await page.getByLabel('Name of the establishment').fill('Wrenfold Smokehouse');
  await page.getByLabel('Establishment number').fill('Est. 00512-W');
  await page.getByLabel('Whose published limits count').selectOption('US, retail and catering');
  await goOnTo('By which clock and in which units do you work?');

  await page.getByRole('radio', { name: '°F and lb' }).check();
  await page.getByRole('radio', { name: 'Letter' }).check();
  await goOnTo('Who are you?');

  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByLabel('User name').fill(userName);
  await page.getByLabel('Password').fill(password);
  await goOnTo('Is this right?');

  await tapOnTo(page.getByRole('heading', { name: 'Today', level: 1 }), page.getByRole('button', { name: 'Open the book' }));
}
