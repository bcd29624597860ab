import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { anEstablishment, anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { aDevice, type Device } from '../support/device';
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
const head = async () => (await done<{ head: { seq: number; hash: string } }>(ask(inspector, contract.ledgerHead, {}))).head;

describe('the lot record', () => {
  test('tells its verdicts in the language it is printed in', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const { text } = await print(`/lots/${lotId}/lot-record.pdf?language=es`);
    expect(text).toContain('156.25 ppm está dentro del límite.');
    expect(text).not.toContain('is within the limit');
  });

  test('tells everything about a lot, from its delivery to its customer', async () => {
    const { lotId, code } = await aSausageLot(kitchen, larder, 'shipped');
    const { text, title, name, pages } = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(name).toBe(`inline; filename="Smoked-sausage-${code}-lot-record.pdf"`);
    expect(title).toBe(`Lot record: Lot ${code}, Smoked sausage`);
    for (const said of [
      'Wrenfold Smokehouse',
      'Est. 00512-W',
      'Pork shoulder',
      'Marlow Packing',
      'ML-88',
      'Curing salt 6.25 %',
      '25 g',
      '156.25 ppm',
      '9 CFR 424.21(c)',
      'Support on file: Letter of our process authority, binder 3',
      'Cook: temperature',
      'Lethality so far',
      'A bracket on a limit spans the two readings',
      'Gap without a reading, 20 min: 120 °F, then 140 °F. Used as it is.',
      '160 °F',
      'Chill: temperature',
      'Label 12 on the roll.',
      `${code}-P1`,
      '800 g',
      '8 kg',
      'Fenwick Deli',
      '10 packages of',
      'Complete and met.',
      'The reviewer',
      'Cleared',
      'Mass balance',
      'Not accounted for',
      'Mar 23, 2026',
      `Page 1 of ${pages.length}`,
    ])
      expect(text).toContain(said);
  });

  test('carries the head of the ledger as it was when it was printed', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { seq, hash } = await head();
    const { text } = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(text).toContain(`Ledger head ${seq}`);
    expect(text.replace(/ /g, '')).toContain(hash);
  });

  test('of a lot on hold says what was missed, by how much, and what still stands in the way', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    await kitchen.read(lotId, 'coldRoom', { entered: { value: 52, unit: '°F' } });
    const { text } = await print(`/lots/${lotId}/lot-record.pdf`);
    for (const said of [
      'On hold',
      '52 °F against ≤ 41 °F',
      'Cause identified and eliminated',
      'Not recorded.',
      'Not reviewed.',
      'Record the corrective action.',
    ]) {
      expect(text).toContain(said);
    }
  });

  test('keeps a corrected value readable beside the one that counts', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const { readingId } = await kitchen.read(lotId, 'coldRoom', { entered: { value: 63, unit: '°F' } });
    const right = await kitchen.read(lotId, 'coldRoom', {
      entered: { value: 63.5, unit: '°F' },
      amends: readingId,
      reason: 'Half a degree was left out.',
    });
    await kitchen.read(lotId, 'coldRoom', {
      entered: { value: 36, unit: '°F' },
      amends: right.readingId,
      reason: 'Digits turned round.',
    });
    const { text } = await print(`/lots/${lotId}/lot-record.pdf`);
    expect(text).toMatch(/Corrected value: 63 °F \(The operator, .*?\) → 63\.5 °F\. Half a degree was left out\./);
    expect(text).toMatch(/Corrected value: 63\.5 °F \(The operator, .*?\) → 36 °F\. Digits turned round\./);
  });

  test('is printed on A4 in °C and kg where the shop works so', async () => {
    const metric = await startApp();
    const theirs = await aShop(metric, anEstablishment({ units: 'metric', paper: 'A4', timeZone: 'Europe/Vienna' }));
    const { lotId } = await aSausageLot(await aSausageKitchen(theirs, metric), metric, 'chilled');
    const { text, pages } = await printed(theirs.owner, `/lots/${lotId}/lot-record.pdf`);
    expect([pages[0]?.width, pages[0]?.height].map((side) => Math.round(side ?? 0))).toEqual([595, 842]);
    for (const said of ['10 kg', '54.4 → 26.7 °C', '2 Mar 2026']) expect(text).toContain(said);
    await metric.close();
  });

  test('is for everybody of the shop, for nobody else', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const path = `/lots/${lotId}/lot-record.pdf`;
    expect(await refused(path, (await anotherShop(larder)).owner)).toEqual([404, 'not-found']);
    expect(await refused(path, aDevice(larder.app))).toEqual([401, 'not-signed-in']);
    expect(await refused(`/lots/${v7()}/lot-record.pdf`)).toEqual([404, 'not-found']);
  });
});
