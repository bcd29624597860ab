import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { anAction, decide, showDeviation } from '../builders/a-settlement';
import { ask, code } from '../support/ask';
import { type Device } from '../support/device';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let inspector: Worker;
beforeAll(async () => {
  larder = await startApp(new Date('2026-03-02T14:00:00Z')); // eight in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  inspector = await shop.hire('inspector');
});
afterAll(() => larder.close());

const print = (path: string) => printed(inspector, path);
const refused = async (path: string, by: Device = inspector) => code(await by.get(path));

describe('the deviation report', () => {
  const reportOn = async (deviationId: string) => (await print(`/deviations/${deviationId}/report.pdf`)).text;
  const acted = (deviationId: string, action: contract.CorrectiveAction) =>
    done(ask(kitchen.operator, contract.recordCorrectiveAction, { actionId: v7(), deviationId, action, takenAt: kitchen.now() }));

  test('of a critical control point holds the four parts of 9 CFR 417.3(a)', async () => {
    const { lotId, code } = await aSausageLot(kitchen, larder, 'cured');
    const { deviationId = '' } = (await aCurve(kitchen, larder, lotId, 'cook', [120, 129])) ?? {};
    await acted(deviationId, anAction.critical);
    await done(decide(shop.owner, deviationId, { decision: 'condemn', weight: { value: 2.8, unit: 'lb' }, reason: 'Burst open.' }));
    const dispositionId = (await showDeviation(shop.owner, deviationId)).dispositions[0]?.dispositionId ?? '';
    const before = await reportOn(deviationId);
    expect(before).toContain('Condemn: 2.8 lb');
    expect(before).toContain('Not yet destroyed: held apart.');
    expect(before).toMatch(/Not decided: [\d.]+ kg of 10.025 kg\./);

    const burnt = { destructionId: v7(), dispositionId, method: 'Dyed, then burnt.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.recordDestruction, burnt));
    await done(decide(shop.owner, deviationId, { reason: 'The rest reached 160 °F.', basis: 'worked on and measured again' }));
    await done(ask(shop.owner, contract.closeDeviation, { closingId: v7(), deviationId, note: 'Answered in full.' }));
    const { form: _, ...parts } = anAction.critical;
    const text = await reportOn(deviationId);
    for (const said of [
      `Lot ${code}, Smoked sausage`,
      'Critical limit missed',
      '9 CFR 417.3(a)',
      '417.3(a)(1)',
      '417.3(a)(4)',
      ...Object.values(parts),
      'Condemn: 2.8 lb',
      'Burst open.',
      'Destroyed: Dyed, then burnt.',
      'Release: ',
      'On: worked on and measured again. The rest reached 160 °F.',
      'Answered in full.',
      'Hold the lot and call the owner.',
      'The operator',
      'Odile Farrow',
    ])
      expect(text).toContain(said);
    expect(text).not.toContain('417.3(b)');
  });

  test('of a prerequisite says that a limit was missed, and names no paragraph', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { deviationId = '' } = await kitchen.read(lotId, 'label', { entered: { answer: false, seen: 'Blurred.' } });
    await acted(deviationId, anAction.prerequisite);
    const text = await reportOn(deviationId);
    for (const said of ['Limit missed', 'Blurred.', 'What was done', anAction.prerequisite.done, 'A chime sounds.'])
      expect(text).toContain(said);
    expect(text).not.toMatch(/ritical limit|417\.3\(/);
  });

  test('of something unforeseen holds the four parts of 9 CFR 417.3(b)', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const deviationId = v7();
    const seen = { deviationId, lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.openDeviation, seen));
    await acted(deviationId, anAction.unforeseen);
    const { form: _, ...parts } = anAction.unforeseen;
    const text = await reportOn(deviationId);
    for (const said of ['Unforeseen', '417.3(b)(1)', '417.3(b)(2)', '417.3(b)(3)', '417.3(b)(4)', ...Object.values(parts)])
      expect(text).toContain(said);
    expect(text).not.toContain('417.3(a)');
  });

  test('is of a delivery too', async () => {
    const itemId = v7();
    await done(
      ask(shop.owner, contract.recordItem, {
        itemId,
        name: 'Chicken thighs',
        kind: 'meat',
        allergens: [],
        receivingLimit: receivedChilled,
      }),
    );
    const supplierId = v7();
    await done(ask(shop.owner, contract.recordSupplier, { supplierId, name: 'Hollow Farm', address: '', contact: '' }));
    const delivery = {
      itemId,
      supplierId,
      supplierLot: 'HF-9',
      weight: { value: 20, unit: 'lb' as const },
      temperature: { value: 58, unit: '°F' as const },
    };
    const receipt = await done<contract.Receipt>(
      ask(kitchen.operator, contract.recordReceipt, {
        receiptId: v7(),
        ...delivery,
        decision: 'accepted',
        reason: 'Cooked at once.',
        takenAt: kitchen.now(),
      }),
    );
    const { text } = await print(`/deviations/${receipt.deviationId}/report.pdf`);
    for (const said of [`Delivery ${receipt.code}, Chicken thighs`, 'The delivery is on hold.', '58 °F', 'at receipt, lot HF-9'])
      expect(text).toContain(said);
  });

  test('is for everybody of the shop, for nobody else', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { deviationId } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 55, unit: '°F' } });
    expect(await refused(`/deviations/${deviationId}/report.pdf`, (await anotherShop(larder)).owner)).toEqual([404, 'not-found']);
    expect(await refused(`/deviations/${v7()}/report.pdf`)).toEqual([404, 'not-found']);
  });
});
