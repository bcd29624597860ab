import { forces, purposes, waysKnown } from '@larderbook/haccp';
import { z } from 'zod';
import { source } from './source';
import { everyone, route } from './route';
import { fault } from './fault';

export const limitSetId = z.string().min(1, fault('choose-a-set')).max(80);

export const limitSetHead = z.object({
  setId: z.string(),
  jurisdiction: z.string(),
  title: z.string(),
  edition: z.string(),
  validFrom: z.string(),
  /** The set of its jurisdiction to look in first. */
  usual: z.boolean(),
  rows: z.number().int(),
  /** Only of one's own edition. */
  own: z
    .object({
      recordedAt: z.string(),
      recordedBy: z.string(),
      replaces: z.string().optional(),
      replacedBy: z.string().optional(),
    })
    .optional(),
});

/** As the source prints it, in every unit it prints. */
const limitRow = z.object({
  rowId: z.string(),
  title: z.string(),
  purpose: z.enum(purposes),
  says: z.array(z.string()),
  /** Only of a table of holding times. */
  table: z.array(z.string()),
  paragraph: z.string(),
  force: z.enum(forces),
  known: z.enum(waysKnown),
  source,
  validFrom: z.string(),
  validUntil: z.string().optional(),
  conditions: z.array(z.string()),
  note: z.string().optional(),
  /** Adopted plans in force that carry this very figure. */
  usedBy: z.array(z.object({ planId: z.string(), title: z.string() })),
});
export type LimitRowShown = z.output<typeof limitRow>;

export const listLimitSets = route({
  method: 'GET',
  path: '/limit-sets',
  roles: everyone,
  summary: 'Published figures, one set for each jurisdiction and edition, and the editions of one’s own',
  returns: z.object({ sets: z.array(limitSetHead) }),
  problems: [],
});
export const showLimitSet = route({
  method: 'GET',
  path: '/limit-set-rows',
  summary: 'The figures of one set, each with its source and the plans that use it',
  roles: everyone,
  query: z.object({ set: limitSetId }),
  returns: z.object({ set: limitSetHead, newer: limitSetHead.optional(), rows: z.array(limitRow) }),
  problems: ['no-such-set'],
});
export const compareLimitSets = route({
  method: 'GET',
  path: '/limit-set-differences',
  summary: 'What two sets print differently',
  roles: everyone,
  query: z.object({ here: limitSetId, there: limitSetId }),
  returns: z.object({
    here: limitSetHead,
    there: limitSetHead,
    onlyHere: z.array(z.string()),
    onlyThere: z.array(z.string()),
    /** Nobody has read these rows in the other set yet, so they are no difference. */
    notRead: z.array(z.string()),
    differing: z.array(
      z.object({
        rowId: z.string(),
        title: z.string(),
        differences: z.array(z.object({ what: z.string(), here: z.string(), there: z.string() })),
      }),
    ),
  }),
  problems: ['no-such-set'],
});
