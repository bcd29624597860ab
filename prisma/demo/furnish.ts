import * as contract from '@larderbook/contracts';
import type { PlanContent } from '@larderbook/contracts';
import { withSupport } from './plans/with-support';
import { inOurWords } from './plans/in-our-words';
import { withOurInstruments } from './plans/with-our-instruments';
import { products, type ProductKey } from './products';
import type { DemoProduct } from './products/demo-product';
import { supplierLotOf } from './receive';
import { customers, demoItems, instruments, owner, receivingLimitOf, suppliers, type ItemKey } from './shop';
import { minutesAfter, newId, Story, type Send } from './story';
import type { World } from './world';

/** The shop before its first lot: suppliers, items, instruments, products, formulas, adopted plans, a shelf of ingredients. */
export async function furnish(send: Send, at: Date, as = owner): Promise<World> {
  const story = new Story(send);
  const world: World = {
    items: ids(demoItems, at),
    suppliers: ids(suppliers, at),
    customers: ids(customers, at),
    instruments: {},
    products: emptyProducts(at),
    receipts: [],
    deliveryNotes: 4107,
  };

  for (const [key, fields] of entries(suppliers))
    story.tell(at, as, contract.recordSupplier).with(() => ({ supplierId: world.suppliers[key] ?? '', ...fields }));
  for (const [key, fields] of entries(customers))
    story.tell(at, as, contract.recordCustomer).with(() => ({ customerId: world.customers[key] ?? '', ...fields }));
  for (const [key, { from: _, ...item }] of entries(demoItems))
    story.tell(at, as, contract.recordItem).with(() => ({
      itemId: world.items[key],
      ...item,
      allergens: item.allergens ?? [],
      receivingLimit: receivingLimitOf(demoItems[key]),
    }));
  for (const { key, ...instrument } of instruments) {
    const instrumentId = (world.instruments[key] = newId(at));
    story.tell(at, as, contract.recordInstrument).with(() => ({ instrumentId, ...instrument }));
  }
  stockIngredients(story, world, minutesAfter(at, 20), as);
  for (const key of Object.keys(products) as ProductKey[]) describeProduct(story, world, key, minutesAfter(at, 40), as);
  await story.run();
  return world;
}

/** Pounds bought of what is not bought by the sack of 25. */
const stock: Partial<Record<ItemKey, number>> = {
  roots: 160,
  barley: 75,
  salt: 50,
  cure: 5,
  erythorbate: 5,
  garlic: 10,
  pepper: 10,
  paprika: 10,
  culture: 1,
  dextrose: 10,
};

/** A shelf of spices and salt that lasts through the story. */
function stockIngredients(story: Story, world: World, at: Date, as: string): void {
  for (const [index, [key, item]] of entries(demoItems).entries()) {
    if (item.kind !== 'ingredient') continue;
    const receiptId = newId(at);
    story.tell(minutesAfter(at, index), as, contract.recordReceipt).with((takenAt) => ({
      receiptId,
      itemId: world.items[key],
      supplierId: world.suppliers[item.from] ?? '',
      supplierLot: supplierLotOf(key, at),
      weight: { value: stock[key] ?? 25, unit: 'lb' },
      decision: 'accepted',
      reason: '',
      takenAt,
    }));
    world.receipts.push({ receiptId, item: key, pounds: Number.POSITIVE_INFINITY, at });
  }
}

function describeProduct(story: Story, world: World, key: ProductKey, at: Date, as: string): void {
  const { fields, meat, ingredients, expectedYieldPercent }: DemoProduct = products[key];
  const { productId } = world.products[key];
  const line =
    (part: 'meat' | 'ingredient') =>
    ([item, percent]: [ItemKey, number]) => ({ part, itemId: world.items[item], percent });
  const planId = newId(at);

  story.tell(at, as, contract.recordProduct).with(() => ({ productId, ...fields }));
  story.tell(minutesAfter(at, 5), as, contract.recordFormula).with(() => ({
    formulaId: newId(at),
    productId,
    expectedYieldPercent,
    lines: [...meat.map(line('meat')), ...ingredients.map(line('ingredient'))],
  }));
  story.tell(minutesAfter(at, 6), as, contract.listStarterPlans).with(
    () => ({}),
    ({ starters }) => {
      const starter = starters.find((one) => one.process === fields.process);
      if (!starter) throw new Error(`There is no starter plan for ${fields.process}`);
      world.products[key].plan = planOf(key, starter.content);
    },
  );
  story.tell(minutesAfter(at, 10), as, contract.recordPlan).with(() => ({ planId, productId, content: world.products[key].plan }));
  story.tell(minutesAfter(at, 15), as, contract.adoptPlan).with(() => ({
    adoptionId: newId(at),
    planId,
    statement: 'I have read this plan against our own process and accept it as the plan of this establishment.',
  }));
}

/** What the shop made of the plan it started from: its own steps and limits, words, instruments and support. */
export function planOf(key: ProductKey, starter: PlanContent): PlanContent {
  const { addToPlan }: DemoProduct = products[key];
  return withSupport(withOurInstruments(inOurWords(key, addToPlan ? addToPlan(starter) : starter)));
}

const entries = <K extends string, V>(record: Record<K, V>) => Object.entries(record) as [K, V][];
const ids = <K extends string>(named: Record<K, unknown>, at: Date) =>
  Object.fromEntries(Object.keys(named).map((key) => [key, newId(at)])) as Record<K, string>;
const emptyProducts = (at: Date): World['products'] =>
  Object.fromEntries(Object.keys(products).map((key) => [key, { productId: newId(at) }])) as World['products'];
