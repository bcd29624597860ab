import { z } from 'zod';
import { id, madeBy, sentence, words } from './fields';
import { floor, route } from './route';
import { fault } from './fault';
import { quantity, word } from './verdicts';

/** Both are left out when nothing is corrected. */
export const amendment = { amends: id.optional(), reason: words().optional() };

/** These keep the id they began with; the rest are listed row by row. */
const lastingKinds = ['receipt', 'stage-end', 'packing', 'shipment', 'removal', 'calibration'] as const;
const voidable = [...lastingKinds, 'reading', 'input', 'weighing', 'disposition', 'destruction', 'action'] as const;

/** What a record says in one field. `at` is epoch ms. */
const said = z.union([z.string(), quantity, z.object({ at: z.number() }), z.object({ day: z.string() }), word]);
export type Said = z.output<typeof said>;

/** What was recorded before is shown struck through. */
export const correction = z.object({
  correctionId: z.string(),
  about: z.enum(lastingKinds),
  /** The id of the first row, which lasts. */
  id: z.string(),
  /** Names a packing by its code, a stage end by its control point. */
  what: word,
  controlPointId: z.string().optional(),
  voided: z.boolean(),
  /** A stage that is finished anew says so by a code. */
  reason: z.union([z.string(), word]),
  made: madeBy,
  /** A voided thing lists all that it said. */
  changes: z.array(z.object({ what: word, before: said.optional(), after: said.optional() })),
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
