import { z } from 'zod';
import { id, madeBy, sentence, words } from './fields';
import { floor, route } from './route';
import { fault } from './fault';

/** Both are left out when nothing is corrected. */
export const amendment = { amends: id.optional(), reason: words().optional() };

/** These keep the id they began with; the rest are listed row by row. */
export const lastingKinds = ['receipt', 'stage-end', 'packing', 'shipment', 'removal', 'calibration'] as const;
export const voidable = [...lastingKinds, 'reading', 'input', 'weighing', 'disposition', 'destruction', 'action'] as const;

/** What was recorded before is shown struck through. */
export const correction = z.object({
  correctionId: z.string(),
  about: z.enum(lastingKinds),
  /** The id of the first row, which lasts. */
  id: z.string(),
  /** For example "Packing SMS-260302-1-P1". */
  what: z.string(),
  controlPointId: z.string().optional(),
  voided: z.boolean(),
  reason: z.string(),
  made: madeBy,
  /** Moments are instants. A voided thing lists all that it said. */
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
