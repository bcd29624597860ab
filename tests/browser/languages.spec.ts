import { expect, test } from '../support/in-a-browser';
import { signIn } from './steps/sign-in';
import { password } from '../builders/a-shop';
import { englishOn, toldTo } from './looks/english-on';
import { faultsOfPage, misfits } from './looks/faults-of-page';

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

/** Each page with what opens over it, by the name of its button. */
const walk: Record<string, string[]> = {
  '/': ['Todo en el libro'],
  '/receiving': [],
  '/receiving/new': ['Agregar un artículo'],
  '/receiving/items': ['Agregar un artículo', 'Corregir'],
  '/receiving/suppliers': ['Agregar un proveedor'],
  '/shipping': [],
  '/shipping/new': ['Un cliente nuevo'],
  '/shipping/shipments': ['Corregir', 'Anular'],
  '/shipping/customers': ['Agregar un cliente', 'Corregir'],
  '/shop': ['Cambiar'],
  '/shop/people': ['Agregar a una persona', 'Cambiar mi contraseña', 'Cambiar'],
  '/shop/instruments': ['Agregar un instrumento', 'Anotar una verificación', 'Corregir'],
  '/shop/ledger': ['Revisar la cadena ahora'],
  '/calculators': [],
  '/calculators/limits': [],
  '/calculators/batch-by-percent': [],
  '/calculators/cure-for-meat': [],
  '/calculators/curve-against-limit': [],
  '/calculators/humidity-while-cooking': [],
  '/calculators/arrival-at-target': [],
  '/calculators/loss-in-drying': [],
  '/calculators/water-in-finished-product': [],
  '/calculators/thermometer-in-boiling-water': [],
  '/welcome': [],
  '/welcome?door=shop': [],
  '/products': ['Agregar un producto'],
  '/nowhere': [],
};

for (const [address, openers] of Object.entries(walk)) {
  test(`${address} says nothing in English to a reader of Spanish, and cuts nothing off`, async ({ page, demonstration, signedIn }) => {
    const told = toldTo(page);
    await signedIn(demonstration.owner);
    await page.setViewportSize({ width: 768, height: 1024 });
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('Cargando…')).toHaveCount(0);
    await expect.poll(() => englishOn(page, told)).toEqual([]); // what the server told is read as it arrives
    for (const width of [360, 768]) {
      await page.setViewportSize({ width, height: 1024 });
      expect(await misfits(page)).toEqual([]);
    }
    for (const opener of openers) {
      await page.getByRole('button', { name: opener }).first().click();
      const dialog = page.getByRole('dialog');
      expect.soft(await englishOn(page, told), opener).toEqual([]);
      if (await dialog.isVisible())
        await dialog
          .getByRole('button', { name: /^(Cancelar|Cerrar|Listo)$/ })
          .first()
          .click();
    }
  });
}

/** The pages of one product, by what stands behind its address. */
for (const behind of ['', '/formula', '/batch', '/limits', '/plan'])
  test(`a product in Spanish: its page${behind} says nothing in English, and cuts nothing off`, async ({
    page,
    demonstration,
    signedIn,
  }) => {
    const told = toldTo(page);
    await signedIn(demonstration.owner);
    await page.goto('/products');
    const product = await page.locator('a[href^="/products/0"]').first().getAttribute('href');
    await page.goto(`${product}${behind}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('Cargando…')).toHaveCount(0);
    await expect.poll(() => englishOn(page, told)).toEqual([]);
    for (const width of [360, 768]) {
      await page.setViewportSize({ width, height: 1024 });
      expect(await misfits(page)).toEqual([]);
    }
  });

test('a plan in Spanish: its document and what would be signed', async ({ page, demonstration, signedIn }) => {
  const told = toldTo(page);
  await signedIn(demonstration.owner);
  await page.goto('/products');
  await page.locator('a[href^="/products/0"]').first().click();
  await page.locator('a[href^="/plans/"]').first().click();
  await expect(page.getByRole('heading', { name: 'Diagrama de flujo' })).toBeVisible();
  await expect(page.getByText('Cargando…')).toHaveCount(0);
  await expect.poll(() => englishOn(page, told)).toEqual([]);
  for (const width of [360, 768]) {
    await page.setViewportSize({ width, height: 1024 });
    expect(await misfits(page)).toEqual([]);
  }
});

test('a plan that is begun in Spanish: its control points and the forms of their limits', async ({ page, demonstration, signedIn }) => {
  const told = toldTo(page);
  await signedIn(demonstration.owner);
  await page.goto('/products');
  const product = await page.locator('a[href^="/products/0"]').first().getAttribute('href');
  await page.goto(`${product}/plan`);
  await page.getByRole('button', { name: 'Embutido curado, ahumado y cocido' }).click();
  await expect(page.getByRole('heading', { name: 'Diagrama de flujo' })).toBeVisible();
  await expect.poll(() => englishOn(page, told)).toEqual([]);
  await page.getByRole('link', { name: 'Sal de cura', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Escribir uno propio' })).toBeVisible();
  for (const opener of ['Elegir un límite publicado', 'Escribir uno propio', 'Cambiar las cifras']) {
    expect.soft(await englishOn(page, told), 'the control point').toEqual([]);
    await page.getByRole('button', { name: opener }).first().click();
    await expect(page.getByText('Cargando…')).toHaveCount(0);
    await expect.poll(() => englishOn(page, told), opener).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Cancelar' }).click();
  }
});

test('a delivery in Spanish: its page, its correction and its voiding', async ({ page, demonstration, signedIn }) => {
  const told = toldTo(page);
  await signedIn(demonstration.owner);
  await page.goto('/receiving');
  await page.locator('a[href^="/receiving/0"]').first().click();
  await expect(page.getByRole('link', { name: 'Todas las entregas' })).toBeVisible();
  expect(await englishOn(page, told)).toEqual([]);
  for (const opener of ['Corregir', 'Anular']) {
    await page.getByRole('button', { name: opener, exact: true }).click();
    expect.soft(await englishOn(page, told), opener).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Cancelar' }).click();
  }
});

test('a calculation in Spanish: what is given, its steps, its result and what to bear in mind', async ({ page, shop, signedIn }) => {
  const told = toldTo(page);
  await signedIn(shop.owner);
  await page.goto('/calculators/pump-by-weight');
  await page.getByLabel('Peso verde').fill('10');
  await page.getByLabel('Peso inyectado').fill('11.2');
  await page.getByRole('button', { name: 'Calcular' }).click();
  await expect(page.getByText('12 %').first()).toBeVisible();
  await expect.poll(() => englishOn(page, told)).toEqual([]);
  expect(await misfits(page)).toEqual([]);
});

for (const point of ['cure', 'cook', 'chill'] as const) {
  test(`how a ${point} was judged, in Spanish`, async ({ page, shop, kitchen, aLot, signedIn }) => {
    const told = toldTo(page);
    const { lotId } = await aLot('chilled');
    await signedIn(shop.owner);
    await page.goto(`/lots/${lotId}/explanations/${kitchen.points[point]}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('Cargando…')).toHaveCount(0);
    await expect.poll(() => englishOn(page, told)).toEqual([]);
  });
}

test('where a lot stands, and what its review finds, in Spanish', async ({ page, shop, kitchen, aLot, signedIn }) => {
  const told = toldTo(page);
  const { lotId } = await aLot('packed');
  await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
  await signedIn(shop.owner);
  await page.goto(`/lots/${lotId}`);
  const held = /^La desviación \d+ está abierta\. .+: 52 °F .+ Siguiente: anotar la acción correctiva\.$/;
  await expect(page.getByText(held)).toBeVisible();
  await expect.poll(() => englishOn(page, told)).toEqual([]);
  await page.goto('/lots');
  await expect(page.getByText(held).first()).toBeVisible();
  await expect.poll(() => englishOn(page, told)).toEqual([]);

  await page.goto(`/lots/${lotId}/review`);
  await expect(page.getByText(/^.+: no cumplido\. 52 °F /)).toBeVisible();
  await expect(page.getByText('Anote la acción correctiva.')).toBeVisible();
  await expect.poll(() => englishOn(page, told)).toEqual([]);
});
