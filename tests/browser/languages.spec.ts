import { expect, test } from '../support/in-a-browser';
import { signIn } from './steps/sign-in';
import { password } from '../builders/a-shop';
import { faultsOfPage } from './looks/faults-of-page';

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

test('a person’s own language goes with them, and stands back for the device’s when they sign out', async ({ page, larderbook, shop }) => {
  const hired = await shop.hire('operator');
  await page.goto(`${larderbook.address}/sign-in`);
  await page.getByLabel('Idioma').selectOption('English');
  await signIn(page, { userName: hired.userName, password });
  await expect(page.getByRole('button', { name: hired.name })).toBeVisible();
  await page.goto(`${larderbook.address}/shop/people`);
  await page.getByLabel('Your language').selectOption('Español');
  await expect(page.getByLabel('Su idioma')).toHaveValue('es');
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  expect(await faultsOfPage(page)).toEqual([]);

  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await page.getByRole('button', { name: hired.name }).click();
  await page.getByRole('button', { name: /^(Sign out|Cerrar sesión)$/ }).click();
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
});

test('the places stand in one row on a tablet, in Spanish too', async ({ page, shop, signedIn }) => {
  await signedIn(shop.owner);
  await page.setViewportSize({ width: 768, height: 1024 });
  await page.goto('/');
  const places = page.getByRole('navigation', { name: 'Secciones' }).getByRole('link');
  await expect(places).toHaveText(['Hoy', 'Lotes', 'Recepción', 'Productos', 'Envíos', 'Rastreo', 'Cálculos', 'Documentos', 'Negocio']);
  const tops = await places.evaluateAll((links) => links.map((link) => Math.round(link.getBoundingClientRect().top)));
  expect(new Set(tops).size).toBe(1);
});

test('where a lot stands, and what its review finds, in Spanish', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const { lotId } = await aLot('packed');
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
  await signedIn(shop.owner);
  await page.goto(`/lots/${lotId}`);
  const held = /^La desviación \d+ está abierta\. .+: 52 °F .+ Siguiente: anotar la acción correctiva\.$/;
  await expect(page.getByText(held)).toBeVisible();
  await page.goto('/lots');
  await expect(page.getByText(held).first()).toBeVisible();

  await page.goto(`/lots/${lotId}/review`);
  await expect(page.getByText(/^.+: no cumplido\. 52 °F /)).toBeVisible();
  await expect(page.getByText('Anote la acción correctiva.')).toBeVisible();
});
