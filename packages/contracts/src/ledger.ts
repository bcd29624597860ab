import { z } from 'zod';
import { everyone, route } from './route';
import { coded } from './verdicts';

export const ledgerHead = route({
  method: 'GET',
  path: '/ledger',
  summary: 'The head of the chain and the latest entries',
  roles: everyone,
  returns: z.object({
    head: z.object({ seq: z.number().int(), hash: z.string() }).optional(),
    latest: z.array(
      z.object({
        seq: z.number().int(),
        at: z.string(),
        /** The clock said an earlier time than at the line before. */
        ranBack: z.boolean(),
        person: z.string(),
        kind: z.string(),
        subject: z.string(),
        hash: z.string(),
      }),
    ),
  }),
  problems: [],
});
export const verifyLedger = route({
  method: 'POST',
  path: '/ledger/verification',
  summary: 'Recompute the chain and every record’s digest',
  roles: everyone,
  returns: z.object({
    entries: z.number().int(),
    records: z.number().int(),
    sound: z.boolean(),
    /** In the order of the lines, and no more than can be read; `broken` counts them all. */
    breaks: z.array(z.object({ seq: z.number().int(), because: coded })),
    broken: z.number().int(),
    /** Lines at which the clock said an earlier time than at the line before; no break. */
    ranBack: z.array(z.number().int()),
  }),
  problems: [],
});
export const exportLedger = route({
  method: 'GET',
  path: '/ledger/export.ndjson',
  summary: 'Every entry with the rows it covers, one JSON object a line',
  roles: everyone,
  returns: { stream: 'application/x-ndjson' },
  problems: [],
});
