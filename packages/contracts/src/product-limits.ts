import { forces, purposes, waysKnown, productClasses, publishedJurisdictions } from '@larderbook/haccp';
import { z } from 'zod';
import { criticalLimit } from './limits';
import { source } from './source';
import { everyone, route } from './route';

const setNamed = z.object({ setId: z.string(), title: z.string(), edition: z.string() });

const inPlan = z.object({
  kind: z.enum(['this figure', 'another figure', 'nothing', 'not at a step', 'no plan']),
  at: z.array(z.string()),
  /** The sets whose figure on the same matter the plan uses instead. */
  from: z.array(z.string()),
});

const limitThatApplies = z.object({
  rowId: z.string(),
  title: z.string(),
  purpose: z.enum(purposes),
  /** In every unit it is printed in. */
  says: z.array(z.string()),
  /** False where the limit names no class and is for every product. */
  isForClass: z.boolean(),
  /** Worked out or answered in the plan. */
  alsoNeeds: z.array(z.string()),
  paragraph: z.string(),
  force: z.enum(forces),
  known: z.enum(waysKnown),
  source,
  note: z.string().optional(),
  /** The last moment it counted, when that has passed. */
  ended: z.string().optional(),
  /** Read in its source, and marked as the one to begin with. */
  offeredFirst: z.boolean(),
  inPlan,
  /** Absent where no control point can judge it. */
  limit: criticalLimit.optional(),
});
export type LimitThatApplies = z.output<typeof limitThatApplies>;

const productLimits = z.object({
  /** Nothing is assumed: without a class and a set there are no limits. */
  productClass: z.enum(productClasses).optional(),
  jurisdiction: z.enum(publishedJurisdictions).optional(),
  place: z.string().optional(),
  /** Places that the jurisdiction tells apart, while none was said. */
  placesToSay: z.array(z.string()),
  set: setNamed
    .extend({
      /** What is missing may still have a limit. */
      isPartial: z.boolean(),
      /** False for a set that the establishment chose. */
      isUsual: z.boolean(),
    })
    .optional(),
  newer: setNamed.optional(),
  nitriteCountedAs: z.array(z.string()),
  /** The plan in force, else the newest version. */
  plan: z.object({ planId: z.string(), version: z.number().int(), inForce: z.boolean() }).optional(),
  limits: z.array(limitThatApplies),
});
export type ProductLimits = z.output<typeof productLimits>;

export const showProductLimits = route({
  method: 'GET',
  path: '/products/:productId/limits',
  roles: everyone,
  summary: 'The published limits that apply to a product, by its class and by where the establishment works',
  returns: productLimits,
  problems: ['not-found'],
});
