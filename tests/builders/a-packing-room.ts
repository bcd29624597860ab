import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll } from 'vitest';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { aSausageKitchen, type SausageKitchen } from './a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop, type Worker } from './a-shop';

export let larder: TestApp;
export let shop: Shop;
export let kitchen: SausageKitchen;
export let inspector: Worker;
export let stranger: Worker;

/** A kitchen of its own for the tests of a file, with somebody who may only look and the owner of another shop. */
export function aPackingRoom(): void {
  beforeAll(async () => {
    larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
    shop = await aShop(larder);
    kitchen = await aSausageKitchen(shop, larder);
    inspector = await shop.hire('inspector');
    stranger = (await anotherShop(larder)).owner;
  });
  afterAll(() => larder.close());
}

type Reply = Awaited<ReturnType<typeof ask>>;
type Partly<R extends contract.RouteShape> = Partial<InputOf<R>>;
export const said = ({ status, body }: Reply) => [status, body.code, body.detail];
export const code = (reply: Reply) => said(reply).slice(0, 2);
export const g = (value: number) => ({ value, unit: 'g' as const });
export const kg = (value: number) => ({ value, unit: 'kg' as const });

export const customer = (fields: Partly<typeof contract.recordCustomer> = {}, by = kitchen.operator) =>
  ask(by, contract.recordCustomer, {
    customerId: v7(),
    name: 'Fenwick Deli',
    address: '8 Mill Street',
    contact: '555 0101',
    ...fields,
  });
export const aCustomer = async (name = 'Fenwick Deli') =>
  (await done<ReplyOf<typeof contract.recordCustomer>>(customer({ name }))).customerId;

export const pack = (lotId: string, fields: Partly<typeof contract.packLot> = {}, by = kitchen.operator) =>
  ask(by, contract.packLot, { packingId: v7(), lotId, count: 10, net: g(500), takenAt: kitchen.now(), ...fields });
export const packed = (lotId: string, fields: Partly<typeof contract.packLot> = {}) =>
  done<ReplyOf<typeof contract.packLot>>(pack(lotId, fields));

export const ship = async (
  lines: { packingId: string; count: number }[],
  fields: Partly<typeof contract.recordShipment> = {},
  by = kitchen.operator,
) =>
  ask(by, contract.recordShipment, {
    shipmentId: v7(),
    customerId: fields.customerId ?? (await aCustomer()),
    document: '',
    lines,
    takenAt: kitchen.now(),
    ...fields,
  });
export const shipped = async (lines: { packingId: string; count: number }[]) => done<ReplyOf<typeof contract.recordShipment>>(ship(lines));

export const stock = async (left: 'some' | 'any' = 'some', by = kitchen.operator) =>
  (await done<ReplyOf<typeof contract.listPackings>>(ask(by, contract.listPackings, { left }))).packings;
export const inStock = async (packingId: string) => (await stock()).find((one) => one.packingId === packingId);
