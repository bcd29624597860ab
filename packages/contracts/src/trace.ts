import { z } from 'zod';
import { everyone, route } from './route';

export const nodeKinds = ['receipt', 'lot', 'packing', 'customer'] as const;

export const findTrace = route({
  method: 'GET', path: '/trace', summary: 'Find deliveries, lots and packages by code, supplier lot, supplier or product', roles: everyone,
  query: z.object({ words: z.string().trim().min(1, 'Type a code or a name.').max(80) }),
  returns: z.object({ found: z.array(z.object({ kind: z.enum(['receipt', 'lot', 'packing']), id: z.string(), code: z.string(), what: z.string(), at: z.string() })) }),
  problems: [],
});

/** Grams along a link; `count` for packages. A difference that no record explains is named, never hidden. */
export const trace = z.object({
  start: z.object({ kind: z.enum(nodeKinds), id: z.string(), code: z.string(), what: z.string() }),
  backward: z.object({ nodes: z.array(z.object({ kind: z.enum(nodeKinds), id: z.string(), code: z.string(), what: z.string(), at: z.string() })), links: z.array(z.object({ from: z.string(), to: z.string(), grams: z.number(), count: z.number().int().optional() })) }),
  forward: z.object({ nodes: z.array(z.object({ kind: z.enum(nodeKinds), id: z.string(), code: z.string(), what: z.string(), at: z.string() })), links: z.array(z.object({ from: z.string(), to: z.string(), grams: z.number(), count: z.number().int().optional() })) }),
  suppliers: z.array(z.object({ name: z.string(), establishmentNumber: z.string().optional(), address: z.string(), contact: z.string(), receipts: z.array(z.object({ code: z.string(), item: z.string(), supplierLot: z.string(), grams: z.number(), receivedAt: z.string() })) })),
  customers: z.array(z.object({ name: z.string(), address: z.string(), contact: z.string(), shipments: z.array(z.object({ number: z.number().int(), packingCode: z.string(), lotCode: z.string(), count: z.number().int(), grams: z.number(), at: z.string() })) })),
  balance: z.array(z.object({
    kind: z.enum(['receipt', 'lot']), id: z.string(), code: z.string(), what: z.string(),
    inGrams: z.number(), usedGrams: z.number(), packedGrams: z.number(), shippedGrams: z.number(), removedGrams: z.number(), condemnedGrams: z.number(), onHandGrams: z.number(), unexplainedGrams: z.number(),
    accountedPercent: z.string(), fault: z.string().optional(),
  })),
  tookMilliseconds: z.number(),
});
export type Trace = z.output<typeof trace>;

export const showTrace = route({
  method: 'GET', path: '/traces/:nodeId', summary: 'Everything behind and everything after one delivery, lot or packing', roles: everyone,
  returns: trace, problems: ['not-found'],
});
