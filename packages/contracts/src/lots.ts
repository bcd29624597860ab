import { z } from 'zod';
import { account } from './account';
import { controlPointOnLot } from './control-point-on-lot';
import { correction } from './corrections';
import { fault } from './fault';
import { flagList, id, instant, madeBy, words } from './fields';
import { pointForecast } from './forecasts';
import { lotInput, removal, weighing } from './lot-entries';
import { packing } from './packings';
import { piece } from './plan';
import { substances } from './receiving';
import { reviewOnLot } from './review-on-lot';
import { everyone, floor, route } from './route';
import { coded, verdict } from './verdicts';

/** Derived from the records each time, never stored. */
export const standings = ['in-work', 'on-hold', 'to-review', 'cleared', 'shipped', 'condemned', 'ended'] as const;
export type Standing = (typeof standings)[number];

export const target = z.object({
  itemId: z.string(),
  itemName: z.string(),
  part: z.enum(['meat', 'ingredient']),
  percent: z.number(),
  /** Absent until meat is in. */
  targetGrams: z.number().optional(),
  /** Why the target differs from the formula, or is missing. */
  onScale: coded.optional(),
  weighedGrams: z.number(),
  substance: z.enum(substances).optional(),
  minGrams: z.number().optional(),
  maxGrams: z.number().optional(),
  printed: z.string().optional(),
  ppm: z.number().optional(),
});

export const lotHead = z.object({
  lotId: z.string(),
  code: z.string(),
  productId: z.string(),
  productName: z.string(),
  standing: z.enum(standings),
  /** Why, and what comes next. */
  because: account,
  startedAt: z.string(),
  openDeviations: z.number().int(),
  packages: z.number().int(),
  packagesLeft: z.number().int(),
  /** Points that the rules of now judge otherwise than the review did. */
  judgedOtherwise: z.array(z.string()),
  /** The running stage that is due first. */
  running: z.object({ controlPointId: z.string(), name: z.string(), bound: coded, deadline: z.number().optional() }).optional(),
  /** The first stage that may miss its bound. Advice only. */
  warning: z.object({ controlPointId: z.string(), name: z.string(), forecast: pointForecast }).optional(),
});
export type LotHead = z.output<typeof lotHead>;

export const lot = lotHead.extend({
  note: z.string(),
  flags: flagList,
  made: madeBy,
  formula: z.object({ formulaId: z.string(), version: z.number().int(), expectedYieldPercent: z.number() }),
  plan: z.object({ planId: z.string(), version: z.number().int(), title: z.string() }),
  useByDays: z.number().int(),
  storage: z.string(),
  /** Used at a control point that states no piece. */
  usualPiece: piece.optional(),
  meatBlockGrams: z.number(),
  inputs: z.array(lotInput),
  targets: z.array(target),
  weighings: z.array(weighing),
  controlPoints: z.array(controlPointOnLot),
  /** No control point of the plan judges these. */
  unjudged: z.array(z.object({ substance: z.enum(substances), verdict, settled: z.boolean() })).optional(),
  removals: z.array(removal),
  packings: z.array(packing),
  deviations: z.array(
    z.object({ deviationId: z.string(), number: z.number().int(), description: account, open: z.boolean(), openedAt: z.string() }),
  ),
  shipments: z.array(
    z.object({
      shipmentId: z.string(),
      number: z.number().int(),
      customer: z.string(),
      packingCode: z.string(),
      count: z.number().int(),
      at: z.string(),
      recordedAt: z.string(),
    }),
  ),
  /** Of goods, stages and deliveries, oldest first. */
  corrections: z.array(correction),
  review: reviewOnLot.optional(),
  /** Oldest first. */
  reviews: z.array(reviewOnLot),
});
export type Lot = z.output<typeof lot>;

export const listLots = route({
  method: 'GET',
  path: '/lots',
  summary: 'Lots and where each stands, newest first',
  roles: everyone,
  query: z.object({ standing: z.enum([...standings, 'all']).default('all'), before: instant.optional() }),
  returns: z.object({ lots: z.array(lotHead), more: z.boolean() }),
  problems: [],
});
export const showLot = route({
  method: 'GET',
  path: '/lots/:lotId',
  summary: 'Everything about one lot',
  roles: everyone,
  returns: lot,
  problems: ['not-found'],
});
export const startLot = route({
  method: 'PUT',
  path: '/lots/:lotId',
  summary: 'Start a lot on the formula and the plan in force',
  roles: floor,
  body: z.object({
    productId: id,
    /** Without it, the establishment’s pattern makes the code. */
    code: z
      .string()
      .trim()
      .toUpperCase()
      .regex(/^[A-Z0-9-]{1,20}$/, fault('lot-code-letters'))
      .optional(),
    note: words(400),
    takenAt: instant,
  }),
  returns: z.object({ lotId: z.string(), code: z.string(), flags: flagList }),
  problems: ['not-found', 'no-formula', 'no-plan-in-force', 'plan-incomplete', 'lot-code-taken', 'in-the-future', 'sent-differently'],
});
