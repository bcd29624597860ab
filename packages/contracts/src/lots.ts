import { z } from 'zod';
import { clarification } from './clarifications';
import { curveFinding } from './curve-findings';
import { linePart } from './line-part';
import { amendment, correction } from './corrections';
import { flagList, id, instant, madeBy, mass, massReply, readingUnits, words } from './fields';
import { pointForecast } from './forecasts';
import { humidityKept } from './humidity-kept';
import { judged } from './limits';
import { coded, verdict, verdicts } from './verdicts';
import { controlPoint, piece } from './plan';
import { substances } from './receiving';
import { everyone, floor, route } from './route';
import { fault } from './fault';

/** Derived from the records each time, never stored. */
export const standings = ['in-work', 'on-hold', 'to-review', 'cleared', 'shipped', 'condemned', 'ended'] as const;
export type Standing = (typeof standings)[number];

const made = {
  flags: flagList,
  made: madeBy,
  /** A later row corrects this one. */
  amendedBy: z.string().optional(),
  amends: z.string().optional(),
  reason: z.string(),
  /** A voided entry counts for nothing. */
  voided: z.object({ reason: z.string(), made: madeBy }).optional(),
};

export const lotInput = z.object({
  inputId: z.string(),
  from: z.object({
    receiptId: z.string().optional(),
    lotId: z.string().optional(),
    code: z.string(),
    what: z.string(),
    supplier: z.string().optional(),
    supplierLot: z.string().optional(),
  }),
  weight: massReply,
  trimmed: massReply,
  ...made,
});
export const weighing = z.object({
  weighingId: z.string(),
  item: z.object({ itemId: z.string(), name: z.string() }),
  /** Present where the delivery was corrected to another item since. */
  itemBefore: z.string().optional(),
  receipt: z.object({ receiptId: z.string(), code: z.string(), supplierLot: z.string() }).optional(),
  weight: massReply,
  /** What the delivery is now known to hold. */
  fractionPercent: z.number().optional(),
  /** What was known at the weighing, where it no longer counts. */
  fractionBefore: z.number().optional(),
  targetGrams: z.number().optional(),
  controlPointId: z.string().optional(),
  judged: z.array(judged),
  ...made,
});
export const reading = z.object({
  readingId: z.string(),
  controlPointId: z.string(),
  probe: z.string(),
  instrument: z.object({ instrumentId: z.string(), name: z.string() }).optional(),
  entered: z.union([
    z.object({ value: z.number(), unit: z.enum(readingUnits) }),
    z.object({ answer: z.boolean(), seen: z.string(), humidity: humidityKept.optional() }),
  ]),
  judged: z.array(judged),
  deviationId: z.string().optional(),
  /** Oldest first; the last counts. */
  clarifications: z.array(clarification).optional(),
  ...made,
});
export const removal = z.object({
  removalId: z.string(),
  rowId: z.string(),
  kind: z.string(),
  weight: massReply,
  note: z.string(),
  made: madeBy,
});

export const controlPointOnLot = z.object({
  controlPoint,
  stands: z.enum(['not-started', 'running', 'met', 'missed', 'undetermined']),
  /** Met, or closed deviations cover every miss. */
  settled: z.boolean(),
  judged: z.array(judged),
  /** A curve is judged as a whole: its readings carry no verdict. */
  readings: z.array(reading),
  endedAt: z.string().optional(),
  /** The operator says that the stage is finished. */
  stageEnd: z.object({ stageEndId: z.string(), rowId: z.string(), made: madeBy }).optional(),
  /** One band per stage. */
  bands: z.array(
    z.object({
      limitId: z.string(),
      label: linePart,
      startAt: z.number(),
      endAt: z.number().optional(),
      deadline: z.number().optional(),
      kind: z.enum(['met', 'missed', 'undetermined', 'running']),
    }),
  ),
  openDeviationId: z.string().optional(),
  /** The curve cannot be met until a person says what these were. Only when one lot is shown. */
  doubts: z.array(curveFinding).optional(),
  /** Only while a stage runs. */
  forecast: pointForecast.optional(),
});
export type ControlPointOnLot = z.output<typeof controlPointOnLot>;

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
  /** One sentence: why, and what comes next. */
  because: z.string(),
  startedAt: z.string(),
  openDeviations: z.number().int(),
  packages: z.number().int(),
  packagesLeft: z.number().int(),
  /** Points that the rules of now judge otherwise than the review did. */
  judgedOtherwise: z.array(z.string()),
  /** The running stage that is due first. */
  running: z.object({ controlPointId: z.string(), name: z.string(), bound: z.string(), deadline: z.number().optional() }).optional(),
  /** The first stage that may miss its bound. Advice only. */
  warning: z.object({ controlPointId: z.string(), name: z.string(), forecast: pointForecast }).optional(),
});
export type LotHead = z.output<typeof lotHead>;

export const packing = z.object({
  packingId: z.string(),
  /** A correction names this row. */
  rowId: z.string(),
  code: z.string(),
  lotId: z.string(),
  lotCode: z.string(),
  productName: z.string(),
  count: z.number().int(),
  left: z.number().int(),
  net: massReply,
  useBy: z.string(),
  flags: flagList,
  made: madeBy,
});

export const reviewOnLot = z.object({
  reviewId: z.string(),
  personId: z.string(),
  by: z.string(),
  at: z.string(),
  statement: z.string(),
  soleWorker: z.boolean(),
  counts: z.boolean(),
  /** Packages still here that the review does not cover. */
  packedSince: z.number().int(),
  /** For example "12 readings, 3 weighings, 1 input, 10 packages". */
  covered: z.string(),
  /** Absent where a later review simply replaced it. */
  takenBack: z
    .object({ what: z.string(), by: z.string(), at: z.string(), /** Only when a person took it back. */ reason: z.string().optional() })
    .optional(),
});

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
    z.object({ deviationId: z.string(), number: z.number().int(), description: z.string(), open: z.boolean(), openedAt: z.string() }),
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
export const putIn = route({
  method: 'PUT',
  path: '/inputs/:inputId',
  summary: 'Put meat, or rework of an earlier lot, into a lot',
  roles: floor,
  body: z
    .object({
      lotId: id,
      receiptId: id.optional(),
      sourceLotId: id.optional(),
      weight: mass,
      /** Weight after boning and trimming; without it, the weight taken. */
      trimmed: mass.optional(),
      /** The number fits another unit; the person is sure. */
      sure: z.boolean().optional(),
      takenAt: instant,
    })
    .extend(amendment)
    .refine((input) => (input.receiptId === undefined) !== (input.sourceLotId === undefined), {
      path: ['receiptId'],
      message: fault('delivery-or-earlier-lot'),
    }),
  returns: z.object({
    inputId: z.string(),
    meatBlockGrams: z.number(),
    flags: flagList,
    /** A smaller meat block may bring a substance over its limit. */
    deviationId: z.string().optional(),
  }),
  problems: [
    'not-found',
    'more-than-there-is',
    'receipt-refused',
    'wrong-item',
    'into-itself',
    'trimmed-exceeds-taken',
    'still-in-use',
    'implausible-value',
    'reason-missing',
    'already-amended',
    'sent-differently',
  ],
});
export const weighIn = route({
  method: 'PUT',
  path: '/weighings/:weighingId',
  summary: 'Weigh an ingredient into a lot',
  roles: floor,
  body: z
    .object({
      lotId: id,
      itemId: id,
      receiptId: id.optional(),
      weight: mass,
      instrumentId: id.optional(),
      takenAt: instant,
      /** The number fits its target in another unit; the person is sure. */
      sure: z.boolean().optional(),
    })
    .extend(amendment),
  returns: z.object({
    weighingId: z.string(),
    controlPointId: z.string().optional(),
    verdicts,
    flags: flagList,
    deviationId: z.string().optional(),
  }),
  problems: [
    'not-found',
    'more-than-there-is',
    'receipt-refused',
    'wrong-item',
    'still-in-use',
    'implausible-value',
    'reason-missing',
    'already-amended',
    'sent-differently',
  ],
});
export const removalKinds = [
  'loss in cooking',
  'loss in chilling',
  'loss in drying',
  'sample',
  'waste',
  'returned to supplier',
  'counted difference',
] as const;
export const recordRemoval = route({
  method: 'PUT',
  path: '/removals/:removalId',
  summary: 'Record weight that left without being packed',
  roles: floor,
  body: z
    .object({
      lotId: id.optional(),
      receiptId: id.optional(),
      kind: z.enum(removalKinds),
      weight: mass,
      note: words(400),
      takenAt: instant,
      ...amendment,
    })
    .refine((removal) => (removal.lotId === undefined) !== (removal.receiptId === undefined), {
      path: ['lotId'],
      message: fault('lot-or-delivery'),
    }),
  returns: z.object({ removalId: z.string() }),
  problems: ['not-found', 'more-than-there-is', 'reason-missing', 'already-amended', 'in-the-future', 'sent-differently'],
});
