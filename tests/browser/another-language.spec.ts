import * as contract from '@larderbook/contracts';
import { pathNames, type RouteShape } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { inPseudo } from '../../packages/messages/src/pseudo';
import { expect, test } from '../support/in-pseudo';
import { misfits } from './looks/faults-of-page';
import { dataTo, untranslatedIn, untranslatedOn } from './looks/untranslated';

test.use({ locale: 'es-MX' });

const routes = Object.values<unknown>(contract).filter(
  (each): each is RouteShape => typeof each === 'object' && each !== null && 'method' in each && 'problems' in each,
);

test('every problem is told in it, whole and field by field', async ({ page, demonstration, signedIn }) => {
  await signedIn(demonstration.owner);
  const told: unknown[] = [];
  for (const route of routes.filter(({ path }) => path !== '/session')) {
    const ids = Object.fromEntries(pathNames(route.path).map((name) => [name, v7()]));
    const path = pathNames(route.path).reduce((before, name) => before.replace(`:${name}`, ids[name] ?? ''), route.path);
    for (const data of [{}, { name: 5, weight: { value: -1, unit: 'lb' }, takenAt: 'soon', reason: '', lines: [], lotId: v7() }]) {
      const headers = { 'x-larderbook': '1', 'accept-language': 'es' };
      const reply = await page.request.fetch(`/api/v1${path}`, { method: route.method, headers, ...(route.body ? { data } : {}) });
      if (reply.headers()['content-type']?.includes('problem')) told.push(await reply.json());
    }
  }
  expect(told.length).toBeGreaterThan(60);
  const texts = told.flatMap((each) => {
    const { title, detail, errors = [] } = each as { title: string; detail?: string; errors?: { detail: string }[] };
    return [title, ...(detail ? [detail] : []), ...errors.map((error) => error.detail)];
  });
  expect(untranslatedIn(texts, [])).toEqual([]);
});

test('a calculation is told in it: what is given, its steps, its result and what to bear in mind', async ({ page, shop, signedIn }) => {
  const data = dataTo(page);
  await signedIn(shop.owner);
  await page.goto('/calculators/pump-by-weight');
  await page.getByLabel(inPseudo('Green weight')).fill('10');
  await page.getByLabel(inPseudo('Pumped weight')).fill('11.2');
  await page.getByRole('button', { name: inPseudo('Calculate') }).click();
  await expect(page.getByText('12 %').first()).toBeVisible();
  await expect.poll(() => untranslatedOn(page, data)).toEqual([]);
  expect(await misfits(page)).toEqual([]);
});
