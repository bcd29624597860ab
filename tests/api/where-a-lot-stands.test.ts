import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot, ship } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;

beforeAll(async () => {
  larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

async function everyPage(standing: contract.Standing | 'all', before?: string): Promise<contract.LotHead[]> {
  const { lots, more } = await done<contract.ReplyOf<typeof contract.listLots>>(
    ask(kitchen.operator, contract.listLots, { standing, before }),
  );
  return more ? [...lots, ...(await everyPage(standing, lots.at(-1)?.startedAt))] : lots;
}

describe('where a lot stands', () => {
  const stands = async (lotId: string) => {
    const { standing, because } = await kitchen.showLot(lotId);
    return [standing, because];
  };

  test('an empty lot waits for its meat, a filled one for its cure', async () => {
    const { lotId } = await kitchen.startLot();
    expect(await stands(lotId)).toEqual(['in-work', [{ code: 'next-put-in-meat' }]]);
    await kitchen.putIn(lotId);
    expect(await stands(lotId)).toEqual(['in-work', [{ code: 'next-point', figures: { point: 'Cure', what: 'Cure is looked at.' } }]]);
  });

  test('a running chill says its bound and by when it has to be reached', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
    const began = larder.clock.now().getTime();
    await aCurve(kitchen, larder, lotId, 'chill', [140, 120, 100], false);
    const { standing, running, controlPoints } = await kitchen.showLot(lotId);
    expect(standing).toBe('in-work');
    // 130 °F may have been passed as early as the last reading above it, so the 1 h 30 min count from there
    expect(running).toEqual({
      controlPointId: kitchen.points.chill,
      name: 'Chill',
      bound: { code: expect.stringMatching(/\.bound$/), figures: expect.objectContaining({ to: { value: '80', unit: '°F' } }) },
      deadline: began + 90 * 60_000,
    });
    expect(controlPoints[2]).toMatchObject({
      stands: 'running',
      bands: [{ label: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, startAt: began, kind: 'running' }],
    });
  });

  test('a whole day: labelled, packed, reviewed, shipped', async () => {
    const labelled = await aSausageLot(kitchen, larder, 'labelled');
    expect(await stands(labelled.lotId)).toEqual(['in-work', [{ code: 'next-pack' }]]);
    const packed = await aSausageLot(kitchen, larder, 'packed');
    expect(await stands(packed.lotId)).toEqual(['to-review', [{ code: 'packed-and-settled' }, { code: 'next-review' }]]);
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(await stands(lotId)).toEqual(['cleared', [{ code: 'so-many-may-ship', figures: { left: 10, count: 10 } }]]);
    await ship(kitchen, packingId, 4);
    expect(await stands(lotId)).toEqual(['cleared', [{ code: 'so-many-may-ship', figures: { left: 6, count: 10 } }]]);
    await ship(kitchen, packingId, 6);
    expect(await stands(lotId)).toEqual(['shipped', [{ code: 'all-left', figures: { count: 10 } }]]);
  });

  test('a review no longer counts once something that it should have seen is recorded after it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 100, unit: 'g' } });
    const lot = await kitchen.showLot(lotId);
    expect(lot).toMatchObject({ standing: 'to-review', review: { counts: false } });
    expect(lot.because).toContainEqual({ code: 'since-weighing', figures: { did: 'recorded' } });
  });

  test('a delivery that was accepted too warm holds every lot it goes into', async () => {
    const itemId = v7();
    await done(
      ask(shop.owner, contract.recordItem, {
        itemId,
        name: 'Pork belly',
        kind: 'meat',
        species: 'pork',
        allergens: [],
        receivingLimit: receivedChilled,
      }),
    );
    const receiptId = await kitchen.receive('pork', {
      itemId,
      temperature: { value: 47, unit: '°F' },
      reason: 'The driver had stood in the sun.',
    });
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId, { receiptId });
    const [standing, because] = await stands(lotId);
    expect([standing, because]).toMatchObject([
      'on-hold',
      [
        { code: 'deviation-open' },
        { code: 'delivery-accepted', figures: { item: 'Pork belly' } },
        { tells: 'because' },
        { code: 'next-record-action' },
      ],
    ]);
  });

  test('the list shows the same, newest first, and can be asked for one standing', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const moreThanAPage = Array.from({ length: 51 }, (_, minute) => `2026-02-20T15:${String(minute).padStart(2, '0')}:00Z`);
    for (const takenAt of moreThanAPage) await kitchen.startLot({ takenAt });
    const all = await everyPage('all');
    expect(all.map((lot) => lot.startedAt)).toEqual(expect.arrayContaining(moreThanAPage.map((moment) => new Date(moment).toISOString())));
    expect(all.find((lot) => lot.lotId === lotId)).toMatchObject({
      standing: 'to-review',
      packages: 10,
      packagesLeft: 10,
      openDeviations: 0,
    });
    expect(all.map((lot) => lot.startedAt)).toEqual(
      all
        .map((lot) => lot.startedAt)
        .sort()
        .reverse(),
    );
    for (const standing of contract.standings) {
      const lots = await everyPage(standing);
      expect(lots).toEqual(all.filter((lot) => lot.standing === standing));
    }
  });

  test('a page begins before the moment it is asked for', async () => {
    for (const takenAt of ['2026-02-10T15:00:00Z', '2026-02-10T15:00:00Z']) await kitchen.startLot({ takenAt });
    const { lots } = await done<contract.ReplyOf<typeof contract.listLots>>(
      ask(kitchen.operator, contract.listLots, { standing: 'all', before: '2026-02-11T00:00:00Z' }),
    );
    expect(lots.map((lot) => lot.code)).toEqual(['26041-2', '26041-1']);
  });
});
