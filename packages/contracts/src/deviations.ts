import { z } from 'zod';
import { id, instant, madeBy, mass, massReply, sentence, words } from './fields';
import { criticalLimit, verdict } from './limits';
import { everyone, floor, route } from './route';

export const decisions = ['release', 'rework', 'reprocess', 'condemn'] as const;

export const deviation = z.object({
  deviationId: z.string(), number: z.number().int(),
  lot: z.object({ lotId: z.string(), code: z.string(), productName: z.string() }).optional(),
  receipt: z.object({ receiptId: z.string(), code: z.string(), itemName: z.string() }).optional(),
  controlPoint: z.object({ controlPointId: z.string(), name: z.string(), hazard: z.string(), correctiveAction: z.string() }).optional(),
  description: z.string(), limit: criticalLimit.optional(), verdict: verdict.optional(),
  open: z.boolean(), opened: madeBy,
  /** Product was shipped before the deviation was found: a possible recall. */
  shippedAlready: z.boolean(),
  actions: z.array(z.object({ actionId: z.string(), cause: z.string(), control: z.string(), prevention: z.string(), product: z.string(), made: madeBy })),
  disposition: z.object({ dispositionId: z.string(), decision: z.enum(decisions), weight: massReply, basis: z.string(), by: z.string(), at: z.string() }).optional(),
  closing: z.object({ closingId: z.string(), note: z.string(), by: z.string(), at: z.string() }).optional(),
});
export type Deviation = z.output<typeof deviation>;

export const listDeviations = route({
  method: 'GET', path: '/deviations', summary: 'Deviations, open ones first', roles: everyone,
  query: z.object({ open: z.enum(['only', 'all']).default('all'), lotId: id.optional() }),
  returns: z.object({ deviations: z.array(deviation) }), problems: [],
});
export const showDeviation = route({
  method: 'GET', path: '/deviations/:deviationId', summary: 'One deviation', roles: everyone, returns: deviation, problems: ['not-found'],
});
export const openDeviation = route({
  method: 'PUT', path: '/deviations/:deviationId', summary: 'Open a deviation by hand: something unforeseen, or a control point that stays undetermined', roles: floor,
  body: z.object({ lotId: id, controlPointId: id.optional(), description: sentence('Say what was seen.'), takenAt: instant }),
  returns: deviation, problems: ['not-found', 'no-such-control-point', 'sent-differently'],
});
export const recordCorrectiveAction = route({
  method: 'PUT', path: '/corrective-actions/:actionId', summary: 'The four parts of 9 CFR 417.3(a)', roles: floor,
  body: z.object({
    deviationId: id,
    cause: sentence('What was the cause, and how was it removed?'),
    control: sentence('How is the control point under control again?'),
    prevention: sentence('What keeps it from happening again?'),
    product: sentence('How is it made sure that no harmful product leaves?'),
    takenAt: instant,
  }),
  returns: deviation, problems: ['not-found', 'deviation-closed', 'sent-differently'],
});
export const recordDisposition = route({
  method: 'PUT', path: '/dispositions/:dispositionId', summary: 'Decide what becomes of the product', roles: ['owner', 'reviewer'],
  body: z.object({
    deviationId: id,
    decision: z.enum(decisions),
    /** Left out only when there is no product: nothing was put in, or all of it has gone elsewhere. */
    weight: mass.optional(),
    basis: sentence('On what is the decision based?'),
  }),
  returns: deviation, problems: ['not-found', 'deviation-closed', 'deviation-already-settled', 'more-than-there-is', 'sent-differently'],
});
export const closeDeviation = route({
  method: 'PUT', path: '/deviation-closings/:closingId', summary: 'Close a deviation; the hold ends with the last one', roles: ['owner', 'reviewer'],
  body: z.object({ deviationId: id, note: words() }),
  returns: deviation, problems: ['not-found', 'actions-missing', 'deviation-closed', 'sent-differently'],
});
