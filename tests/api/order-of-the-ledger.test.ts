import * as contract from '@larderbook/contracts';
import type { ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anEstablishment, aShop, done, password, type Shop } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { aDevice } from '../support/device';
import { startApp, type TestApp } from '../support/start-app';

const twoHours = 2 * 60 * 60_000;

/** The server's clock was two hours ahead when the first of two was recorded, and was right again for the second. */
describe('while a clock was ahead', () => {
  let larder: TestApp;
  let shop: Shop;
  let kitchen: SausageKitchen;
  const ahead = async <T>(work: () => Promise<T>): Promise<T> => {
    larder.clock.moveOn(twoHours);
    const done = await work();
    larder.clock.moveOn(-twoHours);
    return done;
  };
  beforeAll(async () => {
    larder = await startApp();
    shop = await aShop(larder);
    kitchen = await aSausageKitchen(shop, larder);
  });
  afterAll(() => larder.close());

  test('an owner who was hired then and dismissed since neither comes in nor hires anybody', async () => {
    const second = await ahead(() => shop.hire('owner'));
    await done(ask(shop.owner, contract.grantRoles, { grantId: v7(), personId: second.personId, roles: [] }));

    expect(code(await aDevice(larder.app).post('/session', { userName: second.userName, password }))).toEqual([
      401,
      'wrong-user-name-or-password',
    ]);
    const account = { name: 'Somebody new', userName: `new-${v7().slice(-8)}`, password, roles: ['owner'] };
    expect((await second.put(`/people/${v7()}`, account)).status).toBe(401);
    const { people } = await done<{ people: { personId: string; roles: string[] }[] }>(shop.owner.get('/people'));
    expect(people.find(({ personId }) => personId === second.personId)?.roles).toEqual([]);
  });

  test('details that were changed then give way to those changed since', async () => {
    await ahead(() => done(shop.owner.put(`/establishment-details/${v7()}`, anEstablishment({ name: 'Wrenfold, of two o’clock' }))));
    await done(shop.owner.put(`/establishment-details/${v7()}`, anEstablishment({ name: 'Wrenfold, of noon' })));

    const { establishment } = await done<{ establishment: { name: string } }>(shop.owner.get('/session'));
    expect(establishment.name).toBe('Wrenfold, of noon');
  });

  test('a plan that was adopted then gives way to the one adopted since', async () => {
    const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    const adopt = async () => {
      const planId = v7();
      await done(ask(shop.owner, contract.recordPlan, { planId, productId: kitchen.productId, content }));
      await done(ask(shop.owner, contract.adoptPlan, { adoptionId: v7(), planId, statement: 'Adopted.' }));
      return planId;
    };
    await ahead(adopt);
    const since = await adopt();

    const { lotId } = await kitchen.startLot();
    expect((await kitchen.showLot(lotId)).plan.planId).toBe(since);
  });

  test('the ledger goes on, and says at which lines time ran back', async () => {
    const { ranBack, sound } = await done<ReplyOf<typeof contract.verifyLedger>>(ask(shop.owner, contract.verifyLedger, {}));
    expect(sound).toBe(true);
    expect(ranBack.length).toBeGreaterThanOrEqual(3);
    const { latest } = await done<ReplyOf<typeof contract.ledgerHead>>(ask(shop.owner, contract.ledgerHead, {}));
    const flagged = latest.filter((line) => line.ranBack).map(({ seq }) => seq);
    expect(ranBack).toEqual(expect.arrayContaining(flagged));
    expect(flagged.length).toBeGreaterThan(0);
  });
});
