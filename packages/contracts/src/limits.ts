import type { CriticalLimit, LimitKind, LimitOf, Verdict } from '@larderbook/haccp';
import { z } from 'zod';
import { attestation } from './kinds/attestation';
import { bandTime } from './kinds/band-time';
import { concentration } from './kinds/concentration';
import { cooling } from './kinds/cooling';
import { degreeHours } from './kinds/degree-hours';
import { dwell } from './kinds/dwell';
import { figure } from './kinds/figure';
import { freezing } from './kinds/freezing';
import { growth } from './kinds/growth';
import { lethality } from './kinds/lethality';
import { range } from './kinds/range';
import { weightLoss } from './kinds/weight-loss';
import { conditioned } from './limit-conditions';
import { source } from './source';

/** Each kind of critical limit as it crosses the wire; the types are the domain's own. */
const kinds = {
  range,
  concentration,
  dwell,
  cooling,
  bandTime,
  lethality,
  growth,
  degreeHours,
  weightLoss,
  freezing,
  figure,
  attestation,
} satisfies { [K in LimitKind]: z.ZodType<LimitOf<K>> };

type OneKind = (typeof kinds)[LimitKind];

export const criticalLimit = z
  .discriminatedUnion('kind', Object.values(kinds) as [OneKind, ...OneKind[]])
  .and(conditioned) satisfies z.ZodType<CriticalLimit>;

export const verdict = z.object({
  kind: z.enum(['met', 'missed', 'undetermined']),
  measured: z.string(),
  limit: z.string(),
  margin: z.string().optional(),
  because: z.string(),
  next: z.string().optional(),
  notes: z.array(z.string()),
  source,
  running: z
    .object({
      stage: z.string(),
      bound: z.string(),
      deadline: z.number().optional(),
      since: z.number().optional(),
      until: z.number().optional(),
    })
    .optional(),
  still: z.literal('cooling').optional(),
  probe: z.string().optional(),
  spare: z.number().optional(),
}) satisfies z.ZodType<Verdict>;

/** One limit of a control point, and what became of it. */
export const judged = z.object({ limitId: z.string(), limit: criticalLimit, verdict });
export type Judged = z.output<typeof judged>;

/** What a write answers about the limits it touched; shown at once. */
export const verdicts = z.array(z.object({ limitId: z.string(), verdict }));
