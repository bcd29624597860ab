import type { Trace } from '@larderbook/contracts';

type Node = Trace['forward']['nodes'][number];
const node = (kind: Node['kind'], id: string, what = '', day = 1, beside: Partial<Node> = {}): Node => ({
  kind,
  id,
  code: id,
  what,
  ...beside,
  at: `2026-03-0${day}T08:00:00Z`,
});

const [pork, salt] = [
  node('receipt', 'R-1', 'Pork', 1, { supplier: 'Holt', supplierLot: 'H7' }),
  node('receipt', 'R-2', 'Salt', 1, { supplier: 'Spice', supplierLot: 'S1' }),
];
const [sausage, rework] = [node('lot', 'L-1', 'Sausage', 2), node('lot', 'L-2', 'Sausage', 3)];
const [packs, packsAgain] = [node('packing', 'L-1-P1', 'Sausage', 3, { count: 20 }), node('packing', 'L-2-P1', 'Sausage', 4, { count: 5 })];
const [inn, market] = [node('customer', 'The Inn', '1 Lane'), node('customer', 'Market Hall', '2 Street')];
const receiptOf = (code: string, item: string, supplierLot: string, grams: number) => ({
  code,
  item,
  supplierLot,
  grams,
  receivedAt: '2026-03-01T08:00:00Z',
});
const shipmentOf = (number: number, packingCode: string, lotCode: string, count: number) => ({
  number,
  packingCode,
  lotCode,
  count,
  grams: count * 500,
  at: '2026-03-05T08:00:00Z',
});

/**
 * One lot traced both ways: pork and salt before it; after it packages for two customers, and rework into a second lot.
 */
export const aTrace: Trace = {
  start: { kind: 'lot', id: 'L-1', code: 'L-1', what: 'Sausage' },
  backward: {
    nodes: [pork, salt, sausage],
    links: [
      { from: 'R-1', to: 'L-1', grams: 10_000 },
      { from: 'R-2', to: 'L-1', grams: 200 },
    ],
  },
  forward: {
    nodes: [sausage, rework, packs, packsAgain, inn, market],
    links: [
      { from: 'L-1', to: 'L-2', grams: 500 },
      { from: 'L-1', to: 'L-1-P1', grams: 10_000, count: 20 },
      { from: 'L-2', to: 'L-2-P1', grams: 2500, count: 5 },
      { from: 'L-1-P1', to: 'The Inn', grams: 6000, count: 12 },
      { from: 'L-1-P1', to: 'Market Hall', grams: 2500, count: 5 },
      { from: 'L-2-P1', to: 'Market Hall', grams: 2500, count: 5 },
    ],
  },
  suppliers: [
    {
      name: 'Holt',
      establishmentNumber: 'Est. 01177-X',
      address: '',
      contact: '',
      receipts: [receiptOf('R-1', 'Pork', 'H7', 12_000)],
    },
    { name: 'Spice', address: '', contact: '', receipts: [receiptOf('R-2', 'Salt', 'S1', 25_000)] },
  ],
  customers: [
    { name: 'The Inn', address: '1 Lane', contact: '', shipments: [shipmentOf(1, 'L-1-P1', 'L-1', 12)] },
    {
      name: 'Market Hall',
      address: '2 Street',
      contact: '',
      shipments: [shipmentOf(2, 'L-1-P1', 'L-1', 5), shipmentOf(3, 'L-2-P1', 'L-2', 5)],
    },
  ],
  balance: [],
  tookMilliseconds: 4,
};
