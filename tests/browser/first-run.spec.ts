import { expect } from '@playwright/test';
import { anOwner } from '../builders/a-shop';
import { test } from '../support/in-a-browser-quiet';
import { openLarderbook, type Larderbook } from '../support/larderbook';
import { setUpMyShop } from './steps/set-up-my-shop';
import { signIn, signOut } from './steps/sign-in';

const owner = anOwner();

test.describe.serial('the first run of a Larderbook', () => {
  let larderbook: Larderbook;
  test.beforeAll(async () => {
    larderbook = await openLarderbook();
  });
  test.afterAll(() => larderbook.close());

  test('opens on two doors: a shop of one’s own, and a demonstration to look round', async ({ page }) => {
    await page.goto(larderbook.address);
    await expect(page.getByRole('heading', { name: 'Larderbook', level: 1 })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Set up my shop' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Look round the demonstration' })).toBeVisible();
  });

  test('says what is still missing before it goes on to the next question', async ({ page }) => {
    await page.goto(`${larderbook.address}/welcome?door=shop`);
    await page.getByRole('button', { name: 'Next' }).click();
    const name = page.getByLabel('Name of the establishment');
    await expect(name).toHaveAttribute('aria-invalid', 'true');
    await expect(name).toBeFocused();
  });

  test('sets the shop up and opens on Today with its owner signed in', async ({ page }) => {
    await page.goto(larderbook.address);
    await setUpMyShop(page);
    await expect(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
    await expect(page.getByRole('button', { name: owner.name })).toBeVisible();
    await expect(page.getByText('Wrenfold Smokehouse')).toBeVisible();
  });

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
