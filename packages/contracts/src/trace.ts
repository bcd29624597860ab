import { balanceFaults } from '@larderbook/haccp';
import { z } from 'zod';
import { id } from './fields';
import { everyone, route } from './route';
import { fault } from './fault';

const nodeKinds = ['receipt', 'lot', 'packing', 'customer'] as const;

/** `what` is the item, the product or the customer's address. */
const described = {
  id: z.string(),
  code: z.string(),
  what: z.string(),
  supplier: z.string().optional(),
  supplierLot: z.string().optional(),
  isRefused: z.boolean().optional(),
  count: z.number().int().optional(),
};
const node = z.object({ kind: z.enum(nodeKinds), ...described, at: z.string() });

export const findTrace = route({
  method: 'GET',
  path: '/trace',
  summary: 'Find deliveries, lots and packages by code, supplier lot, supplier or product',
  roles: everyone,
  query: z.object({ words: z.string().trim().min(1, fault('type-code-or-name')).max(80) }),
  returns: z.object({
    supplierLots: z.array(
      z.object({ supplierLot: z.string(), supplierId: z.string(), supplier: z.string(), deliveries: z.number().int() }),
    ),
    found: z.array(node.extend({ kind: z.enum(['receipt', 'lot', 'packing']) })),
  }),
  problems: [],
});

/** `count` is packages. Unexplained weight is named, never hidden. */
const trace = z.object({
  start: node.omit({ at: true }),
  backward: z.object({
    nodes: z.array(node),
    links: z.array(z.object({ from: z.string(), to: z.string(), grams: z.number(), count: z.number().int().optional() })),
  }),
  forward: z.object({
    nodes: z.array(node),
    links: z.array(z.object({ from: z.string(), to: z.string(), grams: z.number(), count: z.number().int().optional() })),
  }),
  suppliers: z.array(
    z.object({
      name: z.string(),
      establishmentNumber: z.string().optional(),
      address: z.string(),
      contact: z.string(),
      receipts: z.array(
        z.object({ code: z.string(), item: z.string(), supplierLot: z.string(), grams: z.number(), receivedAt: z.string() }),
      ),
    }),
  ),
  customers: z.array(
    z.object({
      name: z.string(),
      address: z.string(),
      contact: z.string(),
      shipments: z.array(
        z.object({
          number: z.number().int(),
          packingCode: z.string(),
          lotCode: z.string(),
          count: z.number().int(),
          grams: z.number(),
          at: z.string(),
        }),
      ),
    }),
  ),
  balance: z.array(
    z.object({
      kind: z.enum(['receipt', 'lot']),
      ...described,
      inGrams: z.number(),
      usedGrams: z.number(),
      packedGrams: z.number(),
      shippedGrams: z.number(),
      removedGrams: z.number(),
      condemnedGrams: z.number(),
      onHandGrams: z.number(),
      unexplainedGrams: z.number(),
      accountedPercent: z.string(),
      fault: z.enum(balanceFaults).optional(),
    }),
  ),
  tookMilliseconds: z.number(),
});
export type Trace = z.output<typeof trace>;

export const showTrace = route({
  method: 'GET',
  path: '/traces/:nodeId',
  summary: 'Everything behind and everything after one delivery, lot or packing',
  roles: everyone,
  returns: trace,
  problems: ['not-found'],
});

/** A refused delivery went back whole. */
const deliveryTraced = z.object({
  receiptId: z.string(),
  code: z.string(),
  supplierId: z.string(),
  supplier: z.string(),
  item: z.string(),
  supplierLot: z.string(),
  decision: z.enum(['accepted', 'refused']),
  reason: z.string(),
  grams: z.number(),
  receivedAt: z.string(),
  usedGrams: z.number(),
  removedGrams: z.number(),
  condemnedGrams: z.number(),
  onHandGrams: z.number(),
  unexplainedGrams: z.number(),
  accountedPercent: z.string(),
  fault: z.enum(balanceFaults).optional(),
});

/** Lots and packages count once. */
const supplierLotTotals = z.object({
  deliveries: z.number().int(),
  refused: z.number().int(),
  receivedGrams: z.number(),
  refusedGrams: z.number(),
  usedGrams: z.number(),
  leftGrams: z.number(),
  removedGrams: z.number(),
  condemnedGrams: z.number(),
  /** Absolute differences are added: too much never hides what is missing. */
  unexplainedGrams: z.number(),
  accountedPercent: z.string(),
  lots: z.number().int(),
  inWorkGrams: z.number(),
  packed: z.number().int(),
  packedGrams: z.number(),
  shipped: z.number().int(),
  shippedGrams: z.number(),
  notShipped: z.number().int(),
  notShippedGrams: z.number(),
  customers: z.number().int(),
});

const supplierLotTrace = z.object({
  /** As on the first delivery; case and blanks do not count. */
  supplierLot: z.string(),
  /** Includes suppliers not asked for. */
  usedBy: z.array(z.object({ supplierId: z.string(), supplier: z.string(), deliveries: z.number().int() })),
  deliveries: z.array(deliveryTraced),
  totals: supplierLotTotals,
  forward: trace.shape.forward,
  suppliers: trace.shape.suppliers,
  customers: trace.shape.customers,
  balance: trace.shape.balance,
  tookMilliseconds: z.number(),
});
export type SupplierLotTrace = z.output<typeof supplierLotTrace>;

export const traceSupplierLot = route({
  method: 'GET',
  path: '/supplier-lot-traces',
  summary: 'Every delivery of a supplier’s lot number, and everything after them',
  roles: everyone,
  query: z.object({ supplierLot: z.string().trim().min(1, fault('lot-of-the-supplier')).max(80), supplierId: id.optional() }),
  returns: supplierLotTrace,
  problems: ['not-found'],
});
