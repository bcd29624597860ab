import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aSausageLot } from '../builders/a-sausage-lot';
import { aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

const minute = 60_000;
const air = 'Air of the blast chiller';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { surroundings: { name: air, setPoint: { value: 34, unit: '°F' } } });
});
afterAll(() => larder.close());

const refused = ({ status, body }: { status: number; body: { code?: string; detail?: string } }) => [status, body.code, body.detail];

describe('a temperature in the wrong unit', () => {
  const reading = (lotId: string, value: number, fields: Partial<contract.InputOf<typeof contract.recordReading>> = {}) => ({
    readingId: v7(),
    lotId,
    controlPointId: kitchen.points.chill,
    entered: { value, unit: '°F' as const },
    takenAt: kitchen.now(),
    ...fields,
  });
  const send = (input: ReturnType<typeof reading>) => ask(kitchen.operator, contract.recordReading, input);

  /** A chill an hour old: 94.7 °F, in air of 33.5 °F. */
  async function chilling(fahrenheit = [140, 115, 94.7]): Promise<string> {
    const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
    await done(send(reading(lotId, 33.5, { probe: air })));
    for (const value of fahrenheit) {
      await done(send(reading(lotId, value)));
      larder.clock.moveOn(20 * minute);
    }
    return lotId;
  }

  test('31 °F after 94.7 °F in air of 33.5 °F is asked about, and 31 °C is what it may have meant', async () => {
    const lotId = await chilling();
    expect(refused(await send(reading(lotId, 31)))).toEqual([
      422,
      'implausible-value',
      '31 °F is colder than what it lies in. Did you mean 31 °C?',
    ]);
    expect(await done(send(reading(lotId, 31, { entered: { value: 31, unit: '°C' } })))).toMatchObject({
      flags: expect.not.arrayContaining(['unusual-value']),
    });
  });

  test('kept by a person who is sure it ends no stage, and nothing is met by it', async () => {
    const lotId = await chilling();
    const kept = await done<contract.ReplyOf<typeof contract.recordReading>>(send(reading(lotId, 31, { sure: true })));
    expect(kept.flags).toContain('unusual-value');
    expect(kept.verdicts).toMatchObject([{ verdict: { kind: 'undetermined' } }]);
    const { controlPoints } = told(await kitchen.showLot(lotId));
    const chill = controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === kitchen.points.chill);
    expect(chill?.stands).toBe('running');
    expect(chill?.judged[0]?.verdict.notes).toContain('1 reading in doubt: colder than what the core lies in.');
  });

  test('38 °F while it is still hot is asked about by the course of the curve', async () => {
    const lotId = await chilling([140, 115]);
    expect(refused(await send(reading(lotId, 38)))).toEqual([
      422,
      'implausible-value',
      '38 °F is far from 115 °F, about 20 min before. Did you mean 38 °C?',
    ]);
  });

  test('what falls faster than the core of the piece can is asked about, kept when the person is sure, and flagged', async () => {
    const lotId = await chilling([140, 100, 78]);
    larder.clock.moveOn(-19 * minute);
    expect(refused(await send(reading(lotId, 37)))).toEqual([
      422,
      'implausible-value',
      '37 °F falls faster than the core of the piece can: 78 °F, about 1 min before. Is it really so?',
    ]);
    const kept = await done<contract.ReplyOf<typeof contract.recordReading>>(send(reading(lotId, 37, { sure: true })));
    expect(kept.flags).toContain('unusual-value');
    expect(kept.verdicts).toMatchObject([{ verdict: { kind: 'undetermined' } }]);
  });

  test('a chill well on its way down is not asked whether it rose', async () => {
    const lotId = await chilling([140]);
    larder.clock.moveOn(60 * minute);
    const kept = await done<contract.ReplyOf<typeof contract.recordReading>>(send(reading(lotId, 79)));
    expect(kept.flags).not.toContain('unusual-value');
  });

  test('what goes on as it did, the air itself, and a late entry of before it are not', async () => {
    const lotId = await chilling();
    const early = new Date(larder.clock.now().getTime() - 50 * minute).toISOString();
    await done(send(reading(lotId, 128, { takenAt: early })));
    await done(send(reading(lotId, 30, { probe: air })));
    await done(send(reading(lotId, 78)));
  });

  test('a correction is asked about beside the others, without the one that it corrects', async () => {
    const lotId = await chilling();
    const wrong = await done<contract.ReplyOf<typeof contract.recordReading>>(send(reading(lotId, 31, { sure: true })));
    const right = { amends: wrong.readingId, reason: 'Read in °C.', entered: { value: 31, unit: '°C' as const } };
    await done(send(reading(lotId, 31, right)));
  });
});

describe('a weight in the wrong unit', () => {
  const weighing = (lotId: string, value: number, unit: 'g' | 'kg' | 'lb' | 'oz', sure?: boolean) => ({
    weighingId: v7(),
    lotId,
    itemId: kitchen.items.cure,
    weight: { value, unit },
    takenAt: kitchen.now(),
    sure,
  });
  const weigh = (input: ReturnType<typeof weighing>) => ask(kitchen.operator, contract.weighIn, input);

  test('is asked about beside its target, kept nowhere, and flagged when the person is sure', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const target = (await kitchen.showLot(lotId)).targets.find(({ itemId }) => itemId === kitchen.items.cure);
    const value = Math.round(target?.targetGrams ?? 0);
    expect(refused(await weigh(weighing(lotId, value, 'kg')))).toEqual([
      422,
      'implausible-value',
      `${value} kg was entered; ${value} g would be expected. Did you mean ${value} g?`,
    ]);
    expect((await kitchen.showLot(lotId)).weighings).toEqual([]);
    const ounces = Number(((target?.targetGrams ?? 0) / 28.349523125).toFixed(2));
    expect(refused(await weigh(weighing(lotId, ounces, 'g')))[2]).toContain(`Did you mean ${ounces} oz?`);
    const kept = await done<contract.ReplyOf<typeof contract.weighIn>>(weigh(weighing(lotId, ounces, 'g', true)));
    expect(kept.flags).toContain('unusual-value');
  });

  test('the target itself, a part of it and what is still to be weighed are not', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    const target = (await kitchen.showLot(lotId)).targets.find(({ itemId }) => itemId === kitchen.items.cure);
    const part = Math.round((target?.targetGrams ?? 0) * 0.7 * 10) / 10;
    const rest = Math.round(((target?.targetGrams ?? 0) - part) * 10) / 10;
    for (const value of [part, rest]) {
      const kept = await done<contract.ReplyOf<typeof contract.weighIn>>(weigh(weighing(lotId, value, 'g')));
      expect(kept.flags).not.toContain('unusual-value');
    }
  });

  test('meat trimmed to less than half of itself is asked about where another unit explains it', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    const input = {
      inputId: v7(),
      lotId,
      receiptId,
      weight: { value: 10, unit: 'kg' as const },
      trimmed: { value: 8.2, unit: 'lb' as const },
      takenAt: kitchen.now(),
    };
    expect(refused(await ask(kitchen.operator, contract.putIn, input))).toEqual([
      422,
      'implausible-value',
      '8.2 lb is little of 10 kg taken. Did you mean 8.2 kg?',
    ]);
    const kept = await done<contract.ReplyOf<typeof contract.putIn>>(ask(kitchen.operator, contract.putIn, { ...input, sure: true }));
    expect(kept.flags).toContain('unusual-value');
  });
});
