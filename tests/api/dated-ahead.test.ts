import * as contracts from '@larderbook/contracts';
import type { RouteShape } from '@larderbook/contracts';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aShop, type Shop } from '../builders/a-shop';
import { aStockedShop, everyRequest, type Stock } from '../builders/every-request';
import { ask } from '../support/ask';
import type { RouteName } from '../support/routes';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let stock: Stock;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  stock = await aStockedShop(shop, larder);
}, 60_000);
afterAll(() => larder.close());

const minute = 60_000;
type Input = Record<string, unknown> & { takenAt?: string; receipt?: { takenAt: string } };

/** The request of a route, said to have happened so many milliseconds after now. */
function requestAhead(name: RouteName, ms: number): Input {
  const takenAt = new Date(larder.clock.now().getTime() + ms).toISOString();
  const input = everyRequest(stock)[name] as Input;
  return input.receipt ? { ...input, receipt: { ...input.receipt, takenAt } } : { ...input, takenAt };
}
const send = (name: RouteName, ms: number) => ask(shop.owner, contracts[name] as RouteShape, requestAhead(name, ms));

/** What a person says has happened: it cannot be still to come. */
const asserted: RouteName[] = [
  'recordReceipt',
  'correctReceipt',
  'startLot',
  'recordRemoval',
  'clarifyReadings',
  'endStage',
  'recordCalibration',
  'openDeviation',
  'recordCorrectiveAction',
  'recordDestruction',
  'packLot',
  'recordShipment',
];
/** What was shown by an instrument. It was truly shown, by whatever clock: it is kept, flagged and doubted. */
const measured: RouteName[] = ['putIn', 'weighIn', 'recordReading'];

test('every write that states a time is among these', () => {
  const dated = Object.entries(everyRequest(stock)).flatMap(([name, input]) => ('takenAt' in input || 'receipt' in input ? [name] : []));
  expect(dated.sort()).toEqual([...asserted, ...measured].sort());
});

describe('what is said to have happened', () => {
  test.each(asserted)('%s: not more than two minutes ahead of the clock here', async (name) => {
    const ahead = await send(name, 2 * minute + 1);
    expect([ahead.status, ahead.body.code]).toEqual([422, 'in-the-future']);
    expect(ahead.body.detail).toBe('That is dated 2 min ahead of the clock here. Check the date and the time.');
    expect((contracts[name] as RouteShape).problems).toContain('in-the-future');
    const far = await send(name, 26 * 60 * minute);
    expect(far.body.detail).toBe('That is dated 26 h ahead of the clock here. Check the date and the time.');
    expect((await send(name, 2 * minute)).status).toBe(200);
  });
});

test.each(measured)('%s: a measurement by a clock that runs ahead is kept and flagged', async (name) => {
  const reply = await send(name, 3 * minute);
  expect(reply.status).toBe(200);
  expect(reply.body.flags).toContain('in-the-future');
});

test('sent again once it was kept, it gets the same answer, whatever the clock says', async () => {
  const request = requestAhead('recordRemoval', minute);
  const first = await ask(shop.owner, contracts.recordRemoval as RouteShape, request);
  larder.clock.moveOn(-10 * minute);
  const again = await ask(shop.owner, contracts.recordRemoval as RouteShape, request);
  larder.clock.moveOn(10 * minute);
  expect([again.status, again.body]).toEqual([200, first.body]);
});
