import { v7 } from 'uuid';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { planContent } from '../builders/a-plan';
import { productFields } from '../builders/a-product';
import { aShop, type Worker } from '../builders/a-shop';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let owner: Worker;

beforeAll(async () => {
  larder = await startApp();
  ({ owner } = await aShop(larder));
});
afterAll(() => larder.close());

test.each<[string, object]>([
  ['nothing', {}],
  ['a list', []],
  [
    'lines without end',
    {
      ...productFields({ name: '' }),
      productId: v7(),
      expectedYieldPercent: 88,
      lines: Array(5000).fill({ part: 'meat', itemId: v7(), percent: 1 }),
    },
  ],
  [
    'numbers that are none',
    {
      ...productFields(),
      useByDays: 'soon',
      productId: v7(),
      expectedYieldPercent: '88',
      lines: [{ part: 'meat', itemId: 'pork', percent: '100' }],
    },
  ],
  ['a plan nested out of shape', { productId: v7(), content: { steps: { steps: { steps: [] } }, controlPoints: [[[[]]]] } }],
  ['a limit of a kind nobody knows', { productId: v7(), content: changedLimit({ kind: 'guess', source: {} }) }],
  [
    'a limit with impossible figures',
    {
      productId: v7(),
      content: changedLimit({ kind: 'bandTime', from: { '°F': 1e9 }, to: {}, maxSeconds: -1, longestGapSeconds: 0, source: {} }),
    },
  ],
])('a body of %s is refused politely everywhere', async (_case, body) => {
  const paths = [`/products/${v7()}`, `/formulas/${v7()}`, `/plans/${v7()}`, `/plan-adoptions/${v7()}`];
  const replies = await Promise.all([...paths.map((path) => owner.put(path, body)), owner.post(`/formulas/${v7()}/scaled`, body)]);
  for (const reply of replies) expect([reply.status, reply.body.code]).toEqual([400, 'invalid-input']);
});

function changedLimit(limit: object): object {
  const content = planContent();
  return { ...content, controlPoints: content.controlPoints.map((point) => ({ ...point, limits: [{ limitId: v7(), limit }] })) };
}
