import { isOfKind } from '@larderbook/haccp';
import { z } from 'zod';
import { correction } from './corrections';
import { criticalLimit } from './limits';
import { verdict } from './verdicts';
import {
  day,
  flagList,
  id,
  instant,
  madeBy,
  mass,
  massReply,
  name,
  percent,
  sentence,
  share,
  temperature,
  temperatureReply,
  words,
} from './fields';
import { everyone, floor, route } from './route';
import { fault } from './fault';

export const amends = { amends: id.optional() };

export const supplierFields = z.object({
  name,
  establishmentNumber: words(40).optional(),
  address: words(400),
  contact: words(200),
});
export const supplier = supplierFields.extend({ supplierId: z.string() });

export const itemKinds = ['meat', 'ingredient', 'packaging'] as const;
export const species = ['pork', 'beef', 'chicken', 'turkey', 'other poultry', 'lamb', 'game', 'none'] as const;
export const substances = ['sodium nitrite', 'sodium nitrate', 'sodium erythorbate', 'phosphate'] as const;
export const allergens = ['milk', 'eggs', 'fish', 'crustacean shellfish', 'tree nuts', 'peanuts', 'wheat', 'soybeans', 'sesame'] as const;

const itemShape = z.object({
  name,
  kind: z.enum(itemKinds),
  species: z.enum(species).optional(),
  /** `fractionPercent` is of this substance: curing salt 6.25 or 5.88. */
  substance: z.enum(substances).optional(),
  fractionPercent: percent(100).optional(),
  /** Needed for limits on salt in the water phase. */
  saltPercent: share.optional(),
  waterPercent: share.optional(),
  allergens: z.array(z.enum(allergens)),
  receivingLimit: criticalLimit.optional(),
});
const itemFields = itemShape
  .refine((item) => (item.substance === undefined) === (item.fractionPercent === undefined), {
    path: ['fractionPercent'],
    message: fault('substance-with-percentage'),
  })
  .refine((item) => item.substance === undefined || item.kind === 'ingredient', {
    path: ['substance'],
    message: fault('describe-as-ingredient'),
  })
  .refine(({ saltPercent = 0, waterPercent = 0 }) => saltPercent + waterPercent <= 100, {
    path: ['waterPercent'],
    message: fault('more-than-the-whole'),
  })
  .refine((item) => item.receivingLimit === undefined || isOfKind(item.receivingLimit, 'range'), {
    path: ['receivingLimit'],
    message: fault('receiving-by-range'),
  });
export const item = itemShape.extend({ itemId: z.string() });

export const listSuppliers = route({
  method: 'GET',
  path: '/suppliers',
  summary: 'Suppliers',
  roles: everyone,
  returns: z.object({ suppliers: z.array(supplier) }),
  problems: [],
});
export const recordSupplier = route({
  method: 'PUT',
  path: '/suppliers/:supplierId',
  summary: 'Add a supplier, or correct one by naming the row it amends',
  roles: floor,
  body: supplierFields.extend(amends),
  returns: supplier,
  problems: ['not-found', 'already-amended', 'sent-differently'],
});
export const listItems = route({
  method: 'GET',
  path: '/items',
  summary: 'Raw materials, ingredients and packaging',
  roles: everyone,
  returns: z.object({ items: z.array(item) }),
  problems: [],
});
export const recordItem = route({
  method: 'PUT',
  path: '/items/:itemId',
  summary: 'Add an item, or correct one by naming the row it amends',
  roles: floor,
  body: itemFields.and(z.object(amends)),
  returns: item,
  problems: ['not-found', 'already-amended', 'sent-differently'],
});

export const receipt = z.object({
  receiptId: z.string(),
  /** A correction names this row. */
  rowId: z.string(),
  code: z.string(),
  item: z.object({ itemId: z.string(), name: z.string(), kind: z.enum(itemKinds), substance: z.enum(substances).optional() }),
  supplier: z.object({ supplierId: z.string(), name: z.string() }),
  supplierLot: z.string(),
  supplierEstablishmentNumber: z.string().optional(),
  killDate: z.string().optional(),
  packDate: z.string().optional(),
  weight: massReply,
  temperature: temperatureReply.optional(),
  limit: criticalLimit.optional(),
  verdict: verdict.optional(),
  decision: z.enum(['accepted', 'refused']),
  reason: z.string(),
  fractionPercent: z.number().optional(),
  leftGrams: z.number(),
  deviationId: z.string().optional(),
  flags: flagList,
  made: madeBy,
  /** Oldest first. */
  corrections: z.array(correction),
  voided: z.boolean(),
});
export type Receipt = z.output<typeof receipt>;

export const listReceipts = route({
  method: 'GET',
  path: '/receipts',
  summary: 'Deliveries, newest first',
  roles: everyone,
  query: z.object({ itemId: id.optional(), left: z.enum(['some', 'any']).default('any'), before: instant.optional() }),
  returns: z.object({ receipts: z.array(receipt), more: z.boolean() }),
  problems: [],
});
export const showReceipt = route({
  method: 'GET',
  path: '/receipts/:receiptId',
  summary: 'One delivery',
  roles: everyone,
  returns: receipt,
  problems: ['not-found'],
});
const receiptFields = z.object({
  itemId: id,
  supplierId: id,
  supplierLot: z.string().trim().min(1, fault('supplier-lot-from-label')).max(80),
  supplierEstablishmentNumber: words(40).optional(),
  killDate: day.optional(),
  packDate: day.optional(),
  weight: mass,
  temperature: temperature.optional(),
  /** Outside the plausible range; the person is sure. */
  sure: z.boolean().optional(),
  decision: z.enum(['accepted', 'refused']),
  reason: words(),
  fractionPercent: percent(100).optional(),
  takenAt: instant,
});
export const recordReceipt = route({
  method: 'PUT',
  path: '/receipts/:receiptId',
  summary: 'Record a delivery: measured, judged, accepted or refused',
  roles: floor,
  body: receiptFields,
  returns: receipt,
  problems: ['not-found', 'temperature-missing', 'implausible-value', 'reason-missing', 'in-the-future', 'sent-differently'],
});
export const correctReceipt = route({
  method: 'PUT',
  path: '/receipt-corrections/:correctionId',
  summary: 'Correct a delivery; what was made of it is judged again',
  roles: floor,
  body: z.object({
    amends: id,
    reason: sentence(fault('why-entry-corrected')),
    receipt: receiptFields,
  }),
  returns: receipt,
  problems: [
    'not-found',
    'temperature-missing',
    'implausible-value',
    'reason-missing',
    'wrong-item',
    'still-in-use',
    'already-amended',
    'in-the-future',
    'sent-differently',
  ],
});
