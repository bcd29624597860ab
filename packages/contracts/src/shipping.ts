import { z } from 'zod';
import { account } from './account';
import { amendment, correction } from './corrections';
import { count, day, flagList, id, instant, madeBy, mass, name, words } from './fields';
import { packing } from './packings';
import { amends } from './receiving';
import { everyone, floor, route } from './route';
import { fault } from './fault';

const customerFields = z.object({ name, address: words(400), contact: words(200) });
export const customer = customerFields.extend({ customerId: z.string() });

export const listCustomers = route({
  method: 'GET',
  path: '/customers',
  summary: 'Customers',
  roles: everyone,
  returns: z.object({ customers: z.array(customer) }),
  problems: [],
});
export const recordCustomer = route({
  method: 'PUT',
  path: '/customers/:customerId',
  summary: 'Add a customer, or correct one by naming the row it amends',
  roles: floor,
  body: customerFields.extend(amends),
  returns: customer,
  problems: ['not-found', 'already-amended', 'sent-differently'],
});
export const packLot = route({
  method: 'PUT',
  path: '/packings/:packingId',
  summary: 'Pack a run of equal packages of a lot',
  roles: floor,
  body: z.object({
    lotId: id,
    count,
    net: mass,
    /** Without it, the packing day plus the product’s days. */
    useBy: day.optional(),
    takenAt: instant,
    ...amendment,
  }),
  returns: z.object({ packingId: z.string(), code: z.string(), useBy: z.string(), flags: flagList }),
  problems: ['not-found', 'more-than-there-is', 'still-in-use', 'reason-missing', 'already-amended', 'in-the-future', 'sent-differently'],
});
export const listPackings = route({
  method: 'GET',
  path: '/packings',
  summary: 'Packages in stock, oldest use-by first',
  roles: everyone,
  query: z.object({ left: z.enum(['some', 'any']).default('some') }),
  returns: z.object({ packings: z.array(packing.extend({ standing: z.string(), mayShip: z.boolean(), because: account })) }),
  problems: [],
});
const shipment = z.object({
  shipmentId: z.string(),
  /** A correction names this row. */
  rowId: z.string(),
  number: z.number().int(),
  customer,
  document: z.string(),
  made: madeBy,
  /** Oldest first. */
  corrections: z.array(correction),
  voided: z.boolean(),
  lines: z.array(
    z.object({
      packingId: z.string(),
      packingCode: z.string(),
      lotId: z.string(),
      lotCode: z.string(),
      productName: z.string(),
      count: z.number().int(),
      netGrams: z.number(),
    }),
  ),
});
export const listShipments = route({
  method: 'GET',
  path: '/shipments',
  summary: 'Shipments, newest first',
  roles: everyone,
  query: z.object({ before: instant.optional() }),
  returns: z.object({ shipments: z.array(shipment), more: z.boolean() }),
  problems: [],
});
export const recordShipment = route({
  method: 'PUT',
  path: '/shipments/:shipmentId',
  summary: 'Ship packages of cleared lots to a customer',
  roles: floor,
  body: z.object({
    customerId: id,
    document: words(80),
    lines: z
      .array(z.object({ packingId: id, count }))
      .min(1, fault('add-a-package'))
      .max(200)
      .refine((lines) => new Set(lines.map((line) => line.packingId)).size === lines.length, fault('each-packing-once')),
    takenAt: instant,
    ...amendment,
  }),
  returns: shipment,
  problems: [
    'not-found',
    'not-cleared',
    'not-cleared-then',
    'more-than-there-is',
    'reason-missing',
    'already-amended',
    'in-the-future',
    'sent-differently',
  ],
});
