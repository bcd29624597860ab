import { recordOwnLimits } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { done } from '../builders/a-shop';
import { ownLimits } from '../builders/own-limits';
import { ask } from '../support/ask';
import { expect, test } from '../support/in-a-browser';
import { faultsOfPage, misfits } from './looks/faults-of-page';
import { tapOnTo } from './steps/tap-on-to';

test('an own limit is written on a tablet, and a plan is held to it', async ({ page, kitchen, shop, signedIn }) => {
  await signedIn(shop.owner);
  await page.setViewportSize({ width: 768, height: 1024 });

  await page.goto('/calculators/own-limits');
  await expect(page.getByText('No limits of your own yet')).toBeVisible();
  await page.getByRole('link', { name: 'Write an edition' }).click();
  await page.getByRole('button', { name: /^Start a set/ }).click();
  await page.getByRole('textbox', { name: 'Title of the set' }).fill('Our smokehouse');
  await page.getByRole('textbox', { name: 'Edition' }).fill('2026-1');
  await page.getByRole('button', { name: 'Add a figure' }).click();
  await page.getByLabel('What it is', { exact: true }).fill('Core of smoked sausage');
  await page.getByLabel('What it is about').selectOption('cooking');

  await page.getByRole('button', { name: 'Write the figures' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('radio', { name: /^Time held at a temperature/ }).check();
  await dialog.getByLabel('°F', { exact: true }).fill('145');
  await dialog.getByLabel('°C', { exact: true }).fill('62.8');
  await dialog.getByLabel('For', { exact: true }).fill('10');
  await dialog.getByRole('textbox', { name: 'Source' }).fill('Validation of our smokehouse, report 7');
  await dialog.getByRole('textbox', { name: /^Edition or date/ }).fill('2026');
  await dialog.getByRole('checkbox', { name: /read in the source itself/ }).check();
  expect(await faultsOfPage(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Take this limit' }).click();

  await page.getByRole('button', { name: 'Save the edition' }).click();
  await expect(page.getByText('The edition cannot be saved yet.')).toBeVisible();
  await expect(page.getByText('Say where the support is filed, or the section of the source.')).toBeVisible();
  expect(await faultsOfPage(page)).toEqual([]);

  await page.setViewportSize({ width: 360, height: 740 });
  expect(await misfits(page)).toEqual([]);
  await page.setViewportSize({ width: 768, height: 1024 });

  await page.reload();
  await expect(page.getByRole('textbox', { name: 'Title of the set' })).toHaveValue('Our smokehouse');
  const figures = page.getByRole('list', { name: 'Figures of the edition' });
  await expect(figures.getByText('145 °F for 10 min')).toBeVisible();
  await figures.getByRole('button', { name: 'Change Core of smoked sausage' }).click();
  await page.getByRole('textbox', { name: 'Where its support is filed' }).fill('Binder 3, tab B');
  await page.getByRole('button', { name: 'Save the edition' }).click();
  await expect(page.getByRole('rowheader', { name: 'Our smokehouse, 2026-1' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Core of smoked sausage' })).toBeVisible();
  expect(await faultsOfPage(page)).toEqual([]);

  await page.goto(`/products/${kitchen.productId}/plan`);
  await page.getByRole('list', { name: 'Earlier versions' }).getByRole('button').first().click();
  await page.getByRole('link', { name: 'Cook', exact: true }).click();
  await page.getByRole('button', { name: 'Choose a published limit' }).click();
  await dialog.getByRole('button', { name: /^Core of smoked sausage/ }).click();
  await page.getByRole('button', { name: 'Back to the plan' }).click();
  await page.getByRole('button', { name: /^Save as plan/ }).click();
  await expect(page.getByText('145 °F for 10 min').first()).toBeVisible();
  await expect(page.getByText('Validation of our smokehouse, report 7').first()).toBeVisible();
});

test('the next edition goes on from the last one, and is laid beside it', async ({ page, shop, signedIn }) => {
  const first = { ownSetId: v7(), ...ownLimits({ title: 'Our cold rooms', edition: '2026-1' }) };
  await done(ask(shop.owner, recordOwnLimits, first));
  await signedIn(shop.owner);
  await page.setViewportSize({ width: 768, height: 1024 });

  await page.goto('/calculators/own-limits/new');
  await page.getByRole('button', { name: /^Our cold rooms/ }).click();
  const figures = page.getByRole('list', { name: 'Figures of the edition' });
  await expect(figures.getByRole('heading', { name: 'Core of smoked sausage' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Edition' }).fill('2026-1');
  await page.getByRole('button', { name: 'Take figures from a set' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Set: Choose' }).click();
  const sets = page.getByRole('dialog', { name: 'Set', exact: true });
  await sets.getByRole('searchbox').fill('code 2022 catering');
  await expect(sets.getByRole('listitem')).toHaveText(['US, retail and catering, Food Code 2022']);
  expect(await faultsOfPage(page)).toEqual([]);
  await page.keyboard.press('Enter');
  await dialog.getByLabel(/^Find a figure/).fill('cold holding');
  await dialog.getByRole('checkbox', { name: /^Cold holding/ }).check();
  expect(await faultsOfPage(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Take this figure' }).click();

  await page.getByRole('button', { name: 'Save the edition' }).click();
  await expect(page.getByText(/The edition it replaces is called 2026-1 too/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Edition' }).fill('2026-2');
  await tapOnTo(
    page.getByRole('cell', { name: 'Replaced by Our cold rooms, 2026-2' }),
    page.getByRole('button', { name: 'Save the edition' }),
  );
  await page.getByLabel('Beside it').selectOption({ label: 'Our cold rooms, 2026-1' });
  const added = page.getByRole('region', { name: 'Only in Our cold rooms, 2026-2' });
  await expect(added.getByText('Cold holding')).toBeVisible();
  expect(await faultsOfPage(page)).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await misfits(page)).toEqual([]);
});

test('whoever is not the owner reads limits of the shop’s own and writes none', async ({ page, shop, signedIn }) => {
  await signedIn(shop.operator);
  await page.goto('/calculators/own-limits');
  await expect(page.getByRole('heading', { name: 'Own limits', level: 1 })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Write an edition' })).toHaveCount(0);
  await page.goto('/calculators/own-limits/new');
  await expect(page.getByText('Own limits are written by the owner')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Start a set/ })).toHaveCount(0);
});
