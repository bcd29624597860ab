import { faultsOfPage } from './looks/faults-of-page';
import { expect, test } from '../support/in-a-browser';

test.use({ locale: 'es-MX', mayLog: /401 \(Unauthorized\)/ });

test('a tablet set to Spanish is spoken to in Spanish, and keeps another language once it is chosen', async ({
  page,
  larderbook,
  shop,
}) => {
  await page.goto(`${larderbook.address}/sign-in`);
  await expect(page.getByRole('heading', { name: 'Iniciar sesión', level: 1 })).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  expect(await faultsOfPage(page)).toEqual([]);

  await page.getByLabel('Nombre de usuario').fill(shop.owner.userName);
  await page.getByRole('textbox', { name: 'Contraseña' }).fill('not the password');
  await page.getByRole('button', { name: 'Iniciar sesión' }).click();
  await expect(page.getByRole('alert').first()).toContainText('El nombre de usuario o la contraseña no son correctos.');

  await page.getByLabel('Idioma').selectOption('English');
  await expect(page.getByRole('heading', { name: 'Sign in', level: 1 })).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('User name')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
});
