import { z } from 'zod';
import { account } from './account';
import { correctiveAction, correctiveActionForms } from './corrective-actions';
import { disposition, voiding } from './dispositions';
import { fault } from './fault';
import { id, instant, madeBy, massReply, sentence } from './fields';
import { criticalLimit } from './limits';
import { namedDeviation, whichProduct } from './named-deviation';
import { substances } from './receiving';
import { everyone, floor, route } from './route';
import { verdict } from './verdicts';

const actionTaken = z.object({ actionId: z.string(), action: correctiveAction, made: madeBy });
const closing = z.object({ closingId: z.string(), note: z.string(), by: z.string(), at: z.string() });

/** The first product is the one the deviation was opened on. */
const productConcerned = z.object({
  ...whichProduct,
  what: z.string(),
  atStake: massReply,
  undecided: massReply,
  /** Neither taken into a lot nor shipped, condemned or sent back. */
  here: massReply,
  /** Shipped, and not called back. */
  left: massReply,
  /** Open deviations of the same product: one decision may speak for them too. */
  alsoOpen: z.array(z.object({ ...namedDeviation, undecided: massReply })),
});
export type ProductConcerned = z.output<typeof productConcerned>;

export const deviation = z.object({
  ...namedDeviation,
  lot: z.object({ lotId: z.string(), code: z.string(), productName: z.string() }).optional(),
  receipt: z.object({ receiptId: z.string(), code: z.string(), itemName: z.string() }).optional(),
  controlPoint: z
    .object({
      controlPointId: z.string(),
      kind: z.enum(['critical', 'prerequisite']),
      name: z.string(),
      hazard: z.string(),
      correctiveAction: z.string(),
    })
    .optional(),
  form: z.enum(correctiveActionForms),
  /** What a person saw, or what is missed by the records of now or of when it was closed. */
  description: account,
  /** Named where no control point judges the substance. */
  substance: z.enum(substances).optional(),
  limit: criticalLimit.optional(),
  verdict: verdict.optional(),
  /** Present where the verdict has changed since. */
  openedWith: z.object({ verdict }).optional(),
  /** True again when the decisions no longer cover what the deviation concerns. */
  open: z.boolean(),
  opened: madeBy,
  /** A possible recall. */
  shippedAlready: z.boolean(),
  /** In the 90 days before, newest first. */
  recurrence: z.array(z.object({ ...namedDeviation, openedAt: z.string(), description: account, code: z.string() })),
  actions: z.array(actionTaken),
  /** Oldest first. */
  voidedActions: z.array(actionTaken.extend({ voided: voiding })),
  atStake: massReply,
  undecided: massReply,
  /** A hundredth may stay undecided, because scales do not add up. */
  covered: z.boolean(),
  products: z.array(productConcerned),
  dispositions: z.array(disposition),
  closing: closing.optional(),
  closingsTakenBack: z.array(closing.extend({ takenBack: voiding })),
});
export type Deviation = z.output<typeof deviation>;

export const listDeviations = route({
  method: 'GET',
  path: '/deviations',
  summary: 'Deviations, open ones first',
  roles: everyone,
  query: z.object({ open: z.enum(['only', 'all']).default('all'), lotId: id.optional() }),
  returns: z.object({ deviations: z.array(deviation) }),
  problems: [],
});
export const showDeviation = route({
  method: 'GET',
  path: '/deviations/:deviationId',
  summary: 'One deviation',
  roles: everyone,
  returns: deviation,
  problems: ['not-found'],
});
export const openDeviation = route({
  method: 'PUT',
  path: '/deviations/:deviationId',
  summary: 'Open a deviation by hand: something unforeseen, or a control point that stays undetermined',
  roles: floor,
  body: z.object({
    lotId: id,
    controlPointId: id.optional(),
    /** Named where no control point judges the substance. */
    substance: z.enum(substances).optional(),
    description: sentence(fault('what-was-seen')),
    takenAt: instant,
  }),
  returns: deviation,
  problems: ['not-found', 'no-such-control-point', 'in-the-future', 'sent-differently'],
});
