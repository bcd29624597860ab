import type { Page } from '@playwright/test';
import * as contract from '@larderbook/contracts';
import { coolingFromCooking } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { done, type Worker } from '../builders/a-shop';
import type { SausageKitchen } from '../builders/a-sausage-kitchen';
import { withSupport } from '../builders/with-support';
import { ask } from '../support/ask';
import { expect, test } from '../support/in-a-browser';
import { faultsOfPage } from './looks/faults-of-page';
import { recordAt } from './steps/record-at';

// FSIS Compliance Guidelines for Cooling (Appendix B), 1999, option 2: chilling begins within 90 min of cooking.
const minute = 60_000;
const ago = (minutes: number) => new Date(Date.now() - minutes * minute).toISOString();
const widths = [
  [360, 740],
  [768, 1024],
  [1280, 800],
] as const;

test.use({ hasTouch: true });

/** A second sausage of the kitchen, chilled by option 2; its plan is written and not adopted yet. */
async function slowlyChilled(owner: Worker, { planId, items, points }: SausageKitchen): Promise<string> {
  const [productId, formulaId] = [v7(), v7()];
  const { content } = await done<contract.Plan>(ask(owner, contract.showPlan, { planId }));
  const controlPoints = content.controlPoints.map((point) =>
    point.controlPointId === points.chill ? { ...point, limits: [{ limitId: v7(), limit: withSupport(coolingFromCooking) }] } : point,
  );
  await done(
    ask(owner, contract.recordProduct, {
      productId,
      name: 'Ham sausage',
      code: `H${productId.slice(-5).toUpperCase()}`,
      process: 'cured smoked cooked',
      species: 'pork',
      productClass: 'cooked sausage',
      storage: 'Keep cold',
      useByDays: 21,
    }),
  );
  await done(
    ask(owner, contract.recordFormula, {
      formulaId,
      productId,
      expectedYieldPercent: 90,
      lines: [
        { part: 'meat', itemId: items.pork, percent: 100 },
        { part: 'ingredient', itemId: items.cure, percent: 0.25 },
      ],
    }),
  );
  await done(ask(owner, contract.recordPlan, { planId: v7(), productId, content: { ...content, title: 'Ham sausage', controlPoints } }));
  return productId;
}

/** What a person would stumble over, at any width; the page stays as it is. */
async function atEveryWidth(page: Page): Promise<void> {
  for (const [width, height] of widths) {
    await page.setViewportSize({ width, height });
    expect.soft(await faultsOfPage(page), `${page.url()} at ${width} px`).toEqual([]);
  }
}

test('a plan is given what asks when chilling began with one tap, and the piece, the errors and the fewest readings of a chill', async ({
  page,
  shop,
  kitchen,
  signedIn,
}) => {
  const productId = await slowlyChilled(shop.owner, kitchen);
  await signedIn(shop.owner);
  await page.goto(`/products/${productId}/plan`);
  await page.getByRole('list', { name: 'Earlier versions' }).getByRole('button').first().click();
  await page.getByRole('link', { name: 'Chill', exact: true }).click();
  await expect(page.getByText(/no control point of the plan records when it began/)).toBeVisible();
  const clock = page.getByLabel('Its clock starts with');
  await expect(clock.locator('option:checked')).toHaveText('The end of Cook');
  await page.getByRole('button', { name: 'Add “Into the chiller” before it' }).click();
  await expect(page.getByText(/no control point of the plan records when it began/)).toBeHidden();
  await expect(clock.locator('option:checked')).toHaveText(/^The end of Cook, and what is recorded at Into the chiller$/);

  await page.getByLabel('Shape').selectOption({ label: 'Round and long: sausage, log' });
  await page.getByLabel('Thickness where it is thinnest').fill('32');
  await page.getByLabel('The thermometer may be wrong by').fill('1');
  await page.getByLabel('Counted').selectOption({ label: 'At least every so many minutes' });
  await page.getByLabel('Minutes between two readings').fill('60');
  await atEveryWidth(page);
  await page.getByRole('button', { name: 'Back to the plan' }).click();

  await page.getByRole('link', { name: 'Into the chiller', exact: true }).click();
  await expect(page.getByLabel('It follows').locator('option:checked')).toHaveText('The end of Cook');
  await atEveryWidth(page);
  await page.getByRole('button', { name: 'Back to the plan' }).click();
  await page.getByRole('button', { name: /^Save as plan/ }).click();
  await expect(page.getByText(/32 mm/).first()).toBeVisible();
  for (const kept of [/at least every 60 min|every 1 h|every 60 min/i, /± 1 °F|1 °F/])
    await expect(page.getByText(kept).first()).toBeVisible();
});

test('that the product went into the chiller is one tap, with its time, and an earlier one is said', async ({
  page,
  shop,
  kitchen,
  signedIn,
}) => {
  const productId = await slowlyChilled(shop.owner, kitchen);
  const { plans } = await done<contract.Product>(ask(shop.owner, contract.showProduct, { productId }));
  const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: plans[0]?.planId ?? '' }));
  const chill = content.controlPoints.find(({ name }) => name === 'Chill') as contract.ControlPoint;
  const source = { citation: 'Plan of the establishment', edition: '', confirmed: true };
  const statement = 'The sausages are in the chiller: chilling begins now.';
  const into: contract.ControlPoint = {
    ...chill,
    controlPointId: v7(),
    name: 'Into the chiller',
    kind: 'prerequisite',
    takenAs: 'attestation',
    probes: [],
    limits: [{ limitId: v7(), limit: { kind: 'attestation', statement, asks: 'moment', source } }],
  };
  const controlPoints = content.controlPoints.flatMap((point) =>
    point === chill ? [into, { ...chill, follows: into.controlPointId }] : [point],
  );
  const planId = v7();
  await done(ask(shop.owner, contract.recordPlan, { planId, productId, content: { ...content, controlPoints } }));
  await done(ask(shop.owner, contract.adoptPlan, { adoptionId: v7(), planId, statement: 'Adopted.' }));

  const { lotId } = await kitchen.startLot({ productId, takenAt: ago(200) });
  for (const [minutes, value] of [
    [120, 120],
    [90, 150],
    [70, 160],
  ] as const)
    await kitchen.read(lotId, 'cook', { entered: { value, unit: '°F' }, takenAt: ago(minutes) });
  await done(ask(kitchen.operator, contract.endStage, { stageEndId: v7(), lotId, controlPointId: kitchen.points.cook, takenAt: ago(69) }));

  await signedIn(kitchen.operator);
  await page.setViewportSize({ width: 768, height: 1024 });
  await page.goto(`/lots/${lotId}`);
  await recordAt(page, 'Into the chiller');
  const dialog = page.getByRole('dialog', { name: 'Into the chiller' });
  await expect(dialog.getByText(statement)).toBeVisible();
  await atEveryWidth(page);
  for (const inSight of [
    dialog.getByText(statement),
    dialog.getByRole('button', { name: 'Just now' }),
    dialog.getByRole('button', { name: 'Save' }),
  ])
    await expect(inSight).toBeInViewport({ ratio: 1 });
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog.getByText('Saved.', { exact: true })).toBeVisible();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await expect(page.getByRole('region', { name: 'Day sheet', exact: true }).getByText('Into the chiller')).toBeVisible();
  await expect(page.getByRole('list', { name: 'Control points' }).getByRole('button', { name: /^Into the chiller/ })).toContainText('met');
  await atEveryWidth(page);
});
