import { v7 } from 'uuid';
import type { TestApp } from '../support/start-app';
import { receiptFields } from './a-receipt';
import { anotherShop, aShop } from './a-shop';
import { aSupplier } from './a-supplier';
import { anIngredient, anItem } from './an-item';

/** A shop that receives pork and salt from one supplier, and a stranger of another shop. */
export async function aReceivingShop(larder: TestApp) {
  const shop = await aShop(larder);
  const operator = await shop.hire('operator');
  const stranger = (await anotherShop(larder)).owner;
  const pork = await anItem(operator);
  const salt = await anIngredient(operator);
  const holt = await aSupplier(operator);
  const delivery = (fields: Parameters<typeof receiptFields>[1] = {}) =>
    receiptFields({ itemId: pork.itemId, supplierId: holt.supplierId }, fields);
  const receive = (fields: Parameters<typeof receiptFields>[1] = {}, by = operator) => by.put(`/receipts/${v7()}`, delivery(fields));
  return { shop, operator, stranger, pork, salt, holt, delivery, receive };
}
export type ReceivingShop = Awaited<ReturnType<typeof aReceivingShop>>;
