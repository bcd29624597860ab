import { expect, test } from '../support/in-a-browser';

test.use({ mayLog: /404 \(Not Found\)|400 \(Bad Request\)/ });

const unknown = '01990000-0000-7000-8000-0000000000ff';

test('an address that names nothing says so under a heading and leads back, whatever it names', async ({ page, shop, signedIn }) => {
  await signedIn(shop.owner);
  const addresses = [
    ...[
      '/lots/ID',
      '/lots/ID/review',
      `/lots/ID/explanations/${unknown}`,
      '/receiving/ID',
      '/products/ID',
      '/plans/ID',
      '/deviations/ID',
      '/trace/ID',
    ],
    '/trace/supplier-lot?lot=NEVER-SEEN',
  ];
  for (const address of addresses) {
    await page.goto(address.replace('ID', unknown));
    await expect(page.getByRole('heading', { level: 1, name: 'There is no such page' }), address).toBeVisible();
    await expect(page.getByRole('button', { name: 'Try again' })).toHaveCount(0);
    await page.getByRole('link', { name: 'Go to Today' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'Today' })).toBeVisible();
  }
});

test('half an id is an address that names nothing, in words without UUID', async ({ page, shop, signedIn }) => {
  await signedIn(shop.owner);
  for (const address of ['/products/01990000', '/lots/xyz', '/plans/1']) {
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1, name: 'There is no such page' }), address).toBeVisible();
    await expect(page.getByText(/UUID/)).toHaveCount(0);
  }
});
