import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { ask } from '../support/ask';
import type { SausageKitchen } from './a-sausage-kitchen';
import { decide, type Decided } from './a-settlement';
import { done, type Shop } from './a-shop';
import { packingsOf } from './correcting';

export const kg = (value: number) => ({ value, unit: 'kg' as const });
export const g = (value: number) => ({ value, unit: 'g' as const });
export type LoadingDock = Awaited<ReturnType<typeof aLoadingDock>>;

/** Holds, reviews and loads of a kitchen that has one customer. */
export async function aLoadingDock(kitchen: SausageKitchen, shop: Shop) {
  const customerId = v7();
  await done(ask(kitchen.operator, contract.recordCustomer, { customerId, name: 'Fenwick Deli', address: '', contact: '' }));
  const today = () => done<contract.ReplyOf<typeof contract.showToday>>(ask(kitchen.operator, contract.showToday, {}));
  const standing = async (lotId: string) => (await kitchen.showLot(lotId)).standing;
  const openOn = async (lotId: string) => {
    const seen = { deviationId: v7(), lotId, description: 'A glove tip is missing.', takenAt: kitchen.now() };
    return (await done<contract.Deviation>(ask(kitchen.operator, contract.openDeviation, seen))).deviationId;
  };
  const send = (packingId: string, count: number, fields: Partial<InputOf<typeof contract.recordShipment>> = {}) =>
    ask(kitchen.operator, contract.recordShipment, {
      ...{ shipmentId: v7(), customerId, document: '', lines: [{ packingId, count }], takenAt: kitchen.now(), ...fields },
    });
  const pack = (lotId: string, count: number, net: InputOf<typeof contract.packLot>['net']) =>
    done<contract.ReplyOf<typeof contract.packLot>>(
      ask(kitchen.operator, contract.packLot, { packingId: v7(), lotId, count, net, takenAt: kitchen.now() }),
    );
  const sign = (lotId: string, by = shop.owner) =>
    done(ask(by, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' }));
  const mayShip = async (packingId: string) => (await packingsOf(kitchen.operator)).find((one) => one.packingId === packingId)?.mayShip;
  const made = async (deviationId: string, decided: Decided) =>
    (await done<contract.Deviation>(decide(kitchen.reviewer, deviationId, decided))).dispositions.at(-1)?.dispositionId ?? '';
  return { today, standing, openOn, send, pack, sign, mayShip, made };
}
