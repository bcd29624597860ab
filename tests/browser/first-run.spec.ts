import { anOwner, aShop } from '../builders/a-shop';
import { expect, test } from '../support/in-a-browser';
import { openLarderbook, type Larderbook } from '../support/larderbook';
import { faultsOfPage } from './looks/faults-of-page';
import { setUpMyShop } from './steps/set-up-my-shop';
import { signIn, signOut } from './steps/sign-in';

const owner = anOwner();

/** A Larderbook of its own for the tests beside it. */
function aLarderbook(furnish: (larderbook: Larderbook) => Promise<unknown> = () => Promise.resolve()) {
  const opened: { address: string } = { address: '' };
  let larderbook: Larderbook;
  test.beforeAll(async () => {
    larderbook = await openLarderbook();
    opened.address = larderbook.address;
    await furnish(larderbook);
  });
  test.afterAll(() => larderbook.close());
  return opened;
}

test.describe('a Larderbook in which there is nothing yet', () => {
  const larderbook = aLarderbook();

  test('opens on two doors: a shop of one’s own, and a demonstration to look round', async ({ page }) => {
    await page.goto(larderbook.address);
    await expect(page.getByRole('heading', { name: 'Larderbook', level: 1 })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Set up my shop' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Open the demonstration' })).toBeVisible();
  });

  test('says what is still missing before it goes on to the next question', async ({ page }) => {
    await page.goto(`${larderbook.address}/welcome?door=shop`);
    await page.getByRole('button', { name: 'Next' }).click();
    const name = page.getByLabel('Name of the establishment');
    await expect(name).toHaveAttribute('aria-invalid', 'true');
    await expect(name).toBeFocused();
  });

  test('is set up, and opens on Today with its owner signed in', async ({ page }) => {
    await page.goto(larderbook.address);
    await setUpMyShop(page);
    await expect(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
    await expect(page.getByRole('button', { name: owner.name })).toBeVisible();
    await expect(page.getByText('Wrenfold Smokehouse')).toBeVisible();
  });
});

test.describe('a Larderbook that was set up', () => {
  const larderbook = aLarderbook(({ address }) => aShop({ app: address }, { jurisdiction: 'US, retail and catering' }));

  test('lets its owner sign out and in again, back on the page that was asked for', async ({ page }) => {
    await page.goto(`${larderbook.address}/products`);
    await signIn(page, owner);
    await expect(page).toHaveURL(/\/products$/);
    await signOut(page, owner.name);
    await expect(page.getByRole('heading', { name: 'Sign in' })).toBeVisible();

    await page.goto(`${larderbook.address}/lots`);
    await expect(page.getByRole('heading', { name: 'Sign in' })).toBeVisible();
    await signIn(page, owner);
    await expect(page.getByRole('heading', { name: 'Lots', level: 1 })).toBeVisible();
  });

  test('shows which limits apply once the class of a product is said, by the edition its owner chose', async ({ page }) => {
    await page.goto(`${larderbook.address}/products`);
    await signIn(page, owner);
    await page.getByRole('button', { name: 'Add a product' }).first().click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Name').fill('Ground chuck');
    await dialog.getByLabel('Code').fill('GRC');
    await dialog.getByRole('radio', { name: 'Fresh' }).check();
    await dialog.getByLabel('Species').selectOption('Beef');
    await dialog.getByRole('textbox', { name: 'Use by' }).fill('3');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('link', { name: 'Limits that apply' }).click();
    await expect(page.getByText('The class of this product was not said')).toBeVisible();
    expect(await faultsOfPage(page)).toEqual([]);

    await page.getByRole('button', { name: 'Say its class' }).click();
    await dialog.getByLabel('Class').selectOption('Ground beef');
    await dialog.getByRole('button', { name: 'Save', exact: true }).click();
    const cooking = page.getByRole('region', { name: 'Cooking' });
    await expect(cooking.getByText('3-401.11(A)(2)')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Poultry, wild game, stuffed food' })).toBeHidden();
    expect(await faultsOfPage(page)).toEqual([]);
    const limits = page.url();

    await page.goto(`${larderbook.address}/shop`);
    await page.getByRole('button', { name: 'Change' }).click();
    await page.getByLabel('Edition in use').selectOption('US, retail and catering, Food Code 2013');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('US, retail and catering, Food Code 2013')).toBeVisible();
    await page.goto(limits);
    await expect(page.getByText('Only some figures of this edition were read.')).toBeVisible();
    await expect(page.getByText(/^A newer edition is published: .*Food Code 2026/)).toBeVisible();
    await expect(cooking.getByText('Not confirmed in the source itself').first()).toBeVisible();
  });

  test.describe('a refusal', () => {
    test.use({ mayLog: /status of 401/ });

    test('does not let in with a wrong password, and does not say which of the two is wrong', async ({ page }) => {
      await page.goto(larderbook.address);
      await signIn(page, { userName: owner.userName, password: 'quite wrong, too' });
      await expect(page.getByText('The user name or the password is not right.')).toBeVisible();
      await expect(page.getByRole('button', { name: owner.name })).toBeHidden();

      await page.goto(`${larderbook.address}/lots`);
      await expect(page.getByRole('heading', { name: 'Sign in' })).toBeVisible();
    });
  });

  test('is not set up a second time', async ({ page }) => {
    await page.goto(`${larderbook.address}/welcome`);
    await expect(page.getByRole('heading', { name: 'Your shop is set up' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Set up my shop' })).toBeHidden();
  });
});
