import * as contract from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, beforeEach } from 'vitest';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { aSausageKitchen, type SausageKitchen } from './a-sausage-kitchen';
import { anAction, settle as settleIt, type Decided } from './a-settlement';
import { aShop, type Shop, type Worker } from './a-shop';

export let larder: TestApp;
export let shop: Shop;
export let kitchen: SausageKitchen;
export let lotId: string;
/** Of the lot's cold room, at 46 °F. */
export let deviationId: string;

/** Before each test of a file a lot on hold, in a kitchen of its own. */
export function aLotOnHold(): void {
  beforeAll(async () => {
    larder = await startApp();
    shop = await aShop(larder);
    kitchen = await aSausageKitchen(shop, larder);
  });
  beforeEach(() => holdALot());
  afterAll(() => larder.close());
}

/** So much pork in a lot, ten kilograms unless said otherwise, and a cold room that was too warm for it. */
export async function holdALot(weight = kg(10)): Promise<void> {
  ({ lotId } = await kitchen.startLot());
  await kitchen.putIn(lotId, { weight });
  deviationId = await aMiss(lotId);
}

type Reply = Awaited<ReturnType<typeof ask>>;
export const said = ({ status, body }: Reply) => [status, body.code, body.detail];
export const code = (reply: Reply) => said(reply).slice(0, 2);
export const kg = (value: number): EnteredMass => ({ value, unit: 'kg' });
export const lb = (value: number): EnteredMass => ({ value, unit: 'lb' });

export async function aMiss(onLot: string, value = 46): Promise<string> {
  const { deviationId: opened } = await kitchen.read(onLot, 'coldRoom', { entered: { value, unit: '°F' } });
  if (!opened) throw new Error('Nothing was missed');
  return opened;
}

export const act = (fields: Partial<contract.InputOf<typeof contract.recordCorrectiveAction>> = {}, by: Worker = kitchen.operator) =>
  ask(by, contract.recordCorrectiveAction, {
    actionId: v7(),
    deviationId,
    action: anAction.critical,
    takenAt: kitchen.now(),
    ...fields,
  });
type Fields = Partial<contract.InputOf<typeof contract.recordDisposition>>;
/** Releases all of the lot, unless said otherwise. */
export const dispose = (fields: Fields = {}, by: Worker = kitchen.reviewer) => {
  const basis = (fields.decision ?? 'release') === 'release' ? ('test result' as const) : undefined;
  return ask(by, contract.recordDisposition, {
    dispositionId: v7(),
    deviationIds: [deviationId],
    lotId: fields.receiptId ? undefined : lotId,
    decision: 'release',
    weight: kg(10),
    reason: 'Core never above 40 °F.',
    basis,
    ...fields,
  });
};
export const close = (fields = {}, by: Worker = kitchen.reviewer) =>
  ask(by, contract.closeDeviation, { closingId: v7(), deviationId, note: '', ...fields });
export const settle = (fields: Decided & { deviationId?: string } = {}) => {
  const { deviationId: which = deviationId, ...decided } = fields;
  return settleIt(kitchen.reviewer, which, kitchen.now(), [decided]);
};
export const show = (id = deviationId, by: Worker = kitchen.operator) => ask(by, contract.showDeviation, { deviationId: id });
