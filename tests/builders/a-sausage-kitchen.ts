import * as contract from '@larderbook/contracts';
import type { InputOf, ReplyOf } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { ask } from '../support/ask';
import type { TestApp } from '../support/start-app';
import { done, type Shop, type Worker } from './a-shop';
import { aSausagePlan, type SausageOptions, type SausagePoints } from './a-sausage-plan';

type Partly<R extends contract.RouteShape> = Partial<InputOf<R>>;

export type SausageKitchen = {
  operator: Worker;
  reviewer: Worker;
  productId: string;
  planId: string;
  points: SausagePoints;
  items: Record<'pork' | 'salt' | 'cure', string>;
  now(): string;
  receive(item: keyof SausageKitchen['items'], fields?: Partly<typeof contract.recordReceipt>): Promise<string>;
  startLot(fields?: Partly<typeof contract.startLot>): Promise<ReplyOf<typeof contract.startLot>>;
  /** Ten kilograms of pork, unless said otherwise. */
  putIn(lotId: string, fields?: Partly<typeof contract.putIn>): Promise<ReplyOf<typeof contract.putIn>>;
  /** The trade's standard dose for ten kilograms, unless said otherwise. */
  weighCure(lotId: string, fields?: Partly<typeof contract.weighIn>): Promise<ReplyOf<typeof contract.weighIn>>;
  read(
    lotId: string,
    point: keyof SausagePoints,
    fields: Partly<typeof contract.recordReading>,
  ): Promise<ReplyOf<typeof contract.recordReading>>;
  showLot(lotId: string): Promise<contract.Lot>;
};

/**
 * A shop that makes one smoked sausage: items, supplier, product, formula, a plan that is adopted, and two hired people
 * or the owner alone.
 */
export async function aSausageKitchen(
  shop: Shop,
  { clock }: Pick<TestApp, 'clock'>,
  { isAlone = false, ...options }: { isAlone?: boolean } & SausageOptions = {},
): Promise<SausageKitchen> {
  const { owner } = shop;
  const [operator, reviewer] = isAlone ? [owner, owner] : [await shop.hire('operator'), await shop.hire('reviewer')];
  const now = () => clock.now().toISOString();
  const tell = async <R extends contract.RouteShape>(by: Worker, route: R, input: InputOf<R>) => done<ReplyOf<R>>(ask(by, route, input));

  const items = { pork: v7(), salt: v7(), cure: v7() };
  const anItem = { allergens: [] };
  await tell(owner, contract.recordItem, {
    ...anItem,
    itemId: items.pork,
    name: 'Pork shoulder',
    kind: 'meat',
    species: 'pork',
  });
  await tell(owner, contract.recordItem, { ...anItem, itemId: items.salt, name: 'Salt', kind: 'ingredient' });
  await tell(owner, contract.recordItem, {
    ...anItem,
    itemId: items.cure,
    name: 'Curing salt 6.25 %',
    kind: 'ingredient',
    substance: 'sodium nitrite',
    fractionPercent: 6.25,
  });
  const supplierId = v7();
  await tell(owner, contract.recordSupplier, { supplierId, name: 'Marlow Packing', address: '', contact: '' });

  const [productId, formulaId, planId] = [v7(), v7(), v7()];
  const lines = [
    { part: 'meat' as const, itemId: items.pork, percent: 100 },
    { part: 'ingredient' as const, itemId: items.salt, percent: 1.6 },
    { part: 'ingredient' as const, itemId: items.cure, percent: 0.25 },
  ];
  const product = {
    name: 'Smoked sausage',
    code: 'SMS',
    process: 'cured smoked cooked',
    species: 'pork',
    productClass: 'cooked sausage',
    storage: 'Keep cold',
    useByDays: 21,
  } as const;
  const { content, points } = aSausagePlan(options);
  await tell(owner, contract.recordProduct, { productId, ...product });
  await tell(owner, contract.recordFormula, { formulaId, productId, expectedYieldPercent: 90, lines });
  await tell(owner, contract.recordPlan, { planId, productId, content });
  await tell(owner, contract.adoptPlan, { adoptionId: v7(), planId, statement: 'Adopted.' });

  const receive: SausageKitchen['receive'] = async (item, fields) => {
    const receiptId = v7();
    const delivery = {
      receiptId,
      itemId: items[item],
      supplierId,
      supplierLot: 'ML-88',
      weight: { value: 100, unit: 'kg' },
      decision: 'accepted',
      reason: '',
    } as const;
    await tell(operator, contract.recordReceipt, { ...delivery, takenAt: now(), ...fields });
    return receiptId;
  };
  return {
    operator,
    reviewer,
    productId,
    planId,
    points,
    items,
    now,
    receive,
    startLot: (fields) => tell(operator, contract.startLot, { lotId: v7(), productId, note: '', takenAt: now(), ...fields }),
    putIn: async (lotId, fields) => {
      const from = fields?.receiptId || fields?.sourceLotId ? {} : { receiptId: await receive('pork') };
      return tell(operator, contract.putIn, {
        inputId: v7(),
        lotId,
        weight: { value: 10, unit: 'kg' },
        takenAt: now(),
        ...from,
        ...fields,
      });
    },
    weighCure: (lotId, fields) =>
      tell(operator, contract.weighIn, {
        weighingId: v7(),
        lotId,
        itemId: items.cure,
        weight: { value: 25, unit: 'g' },
        takenAt: now(),
        ...fields,
      }),
    read: (lotId, point, fields) =>
      tell(operator, contract.recordReading, {
        readingId: v7(),
        lotId,
        controlPointId: points[point],
        entered: { value: 38, unit: '°F' },
        takenAt: now(),
        ...fields,
      }),
    showLot: (lotId) => tell(operator, contract.showLot, { lotId }),
  };
}
