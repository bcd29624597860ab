import { z } from 'zod';
import { id, madeBy, sentence, words } from './fields';
import { floor, route } from './route';
import { fault } from './fault';

/** What a correction carries beside its values: the row it takes the place of, and why. Left out when nothing is corrected. */
export const amendment = { amends: id.optional(), reason: words().optional() };

/** What can be corrected or voided under the id it began with, and what is listed row by row. */
export const lastingKinds = ['receipt', 'stage-end', 'packing', 'shipment', 'removal', 'calibration'] as const;
export const voidable = [...lastingKinds, 'reading', 'input', 'weighing', 'disposition', 'destruction', 'action'] as const;

/** One correction, or the voiding, of something recorded; what it was before stays and is shown struck through. */
export const correction = z.object({
  correctionId: z.string(),
  about: z.enum(lastingKinds),
  /** Of the thing, for good: the id of its first row. */
  id: z.string(),
  /** "Packing SMS-260302-1-P1" */
  what: z.string(),
  controlPointId: z.string().optional(),
  voided: z.boolean(),
  reason: z.string(),
  made: madeBy,
  /** What it said, and what it says now; moments as instants. Of something voided, all that it said. */
  changes: z.array(z.object({ what: z.string(), before: z.string(), after: z.string(), isMoment: z.boolean() })),
});
export type Correction = z.output<typeof correction>;

export const voidRecord = route({
  method: 'PUT',
  path: '/voids/:voidId',
  summary: 'Void what was recorded: it stays, struck through, and counts no more',
  roles: floor,
  body: z.object({ what: z.enum(voidable), amends: id, reason: sentence(fault('why-voided')) }),
  returns: z.object({ voidId: z.string(), deviationId: z.string().optional() }),
  problems: ['not-found', 'already-amended', 'still-in-use', 'sent-differently'],
});
