import { productClasses } from '@larderbook/haccp';
import { z } from 'zod';
import { count, id, mass, name, percent, words } from './fields';
import { amends, itemKinds, species, substances } from './receiving';
import { everyone, route } from './route';
import { coded } from './verdicts';
import { fault } from './fault';

/** Our own short words for the categories of 9 CFR 417.2(b)(1). */
export const processes = ['cured smoked cooked', 'cook-chill', 'roast', 'cured dried', 'fresh', 'other'] as const;

export const productFields = z.object({
  name,
  code: z
    .string()
    .trim()
    .toUpperCase()
    .regex(/^[A-Z0-9]{1,8}$/, fault('product-code-letters')),
  process: z.enum(processes),
  species: z.enum(species),
  /** Only as fine as published limits tell products apart. */
  productClass: z.enum(productClasses).optional(),
  storage: words(200),
  useByDays: count.max(730),
});

export const formulaLine = z.object({ part: z.enum(['meat', 'ingredient']), itemId: id, percent: percent(100) });
const formula = z.object({
  formulaId: z.string(),
  version: z.number().int(),
  expectedYieldPercent: z.number(),
  lines: z.array(
    formulaLine.extend({
      itemName: z.string(),
      itemKind: z.enum(itemKinds),
      substance: z.enum(substances).optional(),
      fractionPercent: z.number().optional(),
    }),
  ),
  usedByLots: z.number().int(),
  recordedAt: z.string(),
  recordedBy: z.string(),
});
export type Formula = z.output<typeof formula>;

export const planSummary = z.object({
  planId: z.string(),
  version: z.number().int(),
  title: z.string(),
  recordedAt: z.string(),
  recordedBy: z.string(),
  adoptedAt: z.string().optional(),
  adoptedBy: z.string().optional(),
  inForce: z.boolean(),
});
const productHead = productFields.extend({
  productId: z.string(),
  formulaVersion: z.number().int().optional(),
  planInForce: z.number().int().optional(),
});
const product = productHead.extend({ formulas: z.array(formula), plans: z.array(planSummary) });
export type Product = z.output<typeof product>;

export const listProducts = route({
  method: 'GET',
  path: '/products',
  summary: 'Products, with the formula and plan in force',
  roles: everyone,
  returns: z.object({ products: z.array(productHead) }),
  problems: [],
});
export const showProduct = route({
  method: 'GET',
  path: '/products/:productId',
  summary: 'One product with every version of its formula and plan',
  roles: everyone,
  returns: product,
  problems: ['not-found'],
});
export const recordProduct = route({
  method: 'PUT',
  path: '/products/:productId',
  summary: 'Add a product, or correct one by naming the row it amends',
  roles: ['owner'],
  body: productFields.extend(amends),
  returns: productHead,
  problems: ['not-found', 'already-amended', 'sent-differently'],
});
export const recordFormula = route({
  method: 'PUT',
  path: '/formulas/:formulaId',
  summary: 'Write the next version of a product’s formula',
  roles: ['owner'],
  body: z.object({
    productId: id,
    expectedYieldPercent: percent(200),
    lines: z.array(formulaLine).min(1, fault('one-line-at-least')).max(60),
  }),
  returns: formula,
  problems: ['not-found', 'formula-incomplete', 'sent-differently'],
});
export const planBatch = route({
  method: 'POST',
  path: '/formulas/:formulaId/scaled',
  summary: 'Scale a formula to trimmed meat, or back from packages wanted; nothing is recorded',
  roles: everyone,
  body: z.union([z.object({ trimmedMeat: mass }), z.object({ packages: count, net: mass })]),
  returns: z.object({
    meatGrams: z.number(),
    totalGrams: z.number(),
    expectedPackedGrams: z.number(),
    lines: z.array(z.object({ itemName: z.string(), part: z.enum(['meat', 'ingredient']), percent: z.number(), grams: z.number() })),
    doses: z.array(
      z.object({
        itemName: z.string(),
        substance: z.enum(substances),
        ppm: z.number(),
        weighGrams: z.number().optional(),
        onScale: coded.optional(),
        minGrams: z.number().optional(),
        maxGrams: z.number().optional(),
        printed: z.string(),
      }),
    ),
  }),
  problems: ['not-found'],
});
