import type { Page } from '@playwright/test';

/** On the page that asks who it is. */
export async function signIn(page: Page, who: { userName: string; password: string }): Promise<void> {
  await page.getByLabel('User name').fill(who.userName);
  await page.getByLabel('Password').fill(who.password);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
}

/** By the name of the person in the book's spine, as one who hands the tablet on. */
export async function signOut(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name }).click();
  await page.getByRole('button', { name: 'Sign out' }).click();
}
