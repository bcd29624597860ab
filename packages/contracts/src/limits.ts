import { z } from 'zod';
import type { CriticalLimit, Verdict } from '@larderbook/haccp';

/** Critical limits and verdicts as they cross the wire; the types are the domain's own. */
export const source = z.object({ citation: z.string().min(1), edition: z.string(), confirmed: z.boolean(), url: z.string().optional() });

const hundredths = z.number().int().min(-10_000).max(60_000);
export const printed = z
  .object({ '°F': hundredths.optional(), '°C': hundredths.optional() })
  .refine((figure) => figure['°F'] !== undefined || figure['°C'] !== undefined, 'Give the temperature in at least one unit.');
/** Printed tables of holding times go down to tenths of a second. */
const seconds = z.number().min(0).max(30 * 86_400).multipleOf(0.1);
const gap = z.number().int().min(1).max(7 * 86_400);

export const criticalLimit = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('range'),
    measured: z.enum(['temperature', 'pH', 'aw', 'percent']),
    min: z.union([printed, z.number()]).optional(),
    max: z.union([printed, z.number()]).optional(),
    /** Where the source says "above" or "less than", the figure itself is outside. */
    signs: z.object({ min: z.literal('>').optional(), max: z.literal('<').optional() }).optional(),
    source,
  }),
  z.object({
    kind: z.literal('concentration'),
    substance: z.enum(['sodium nitrite', 'sodium nitrate', 'sodium erythorbate', 'phosphate']),
    min: z.number().int().min(0).optional(),
    max: z.number().int().min(0).optional(),
    /** The exact maximum in thousandths of a ppm, where hundredths cannot hold the source’s figure. */
    maxThousandths: z.number().int().min(0).optional(),
    /** The figures are of the ion; weighings of the sodium salt are converted. */
    countedAs: z.enum(['NO₂', 'NO₃']).optional(),
    printed: z.string().min(1),
    source,
  }),
  z.object({
    kind: z.literal('dwell'),
    rows: z.array(z.object({ at: printed, seconds })).min(1).max(60),
    longestGapSeconds: gap,
    source,
  }),
  z.object({
    kind: z.literal('cooling'),
    stages: z
      .array(z.object({ from: printed, to: printed, withinSeconds: seconds, counted: z.enum(['stage', 'start']) }))
      .min(1)
      .max(6),
    startWithinSeconds: seconds.optional(),
    longestGapSeconds: gap,
    source,
  }),
  z.object({ kind: z.literal('bandTime'), from: printed, to: printed, maxSeconds: seconds, longestGapSeconds: gap, source }),
  z.object({ kind: z.literal('attestation'), statement: z.string().min(3), source }),
]) satisfies z.ZodType<CriticalLimit>;

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
      stage: z.string(), bound: z.string(), deadline: z.number().optional(), since: z.number().optional(), until: z.number().optional(),
    })
    .optional(),
  probe: z.string().optional(),
  spare: z.number().optional(),
}) satisfies z.ZodType<Verdict>;

/** One limit of a control point, and what became of it. */
export const judged = z.object({ limitId: z.string(), limit: criticalLimit, verdict });
export type Judged = z.output<typeof judged>;

/** What a write answers about the limits it touched; shown at once. */
export const verdicts = z.array(z.object({ limitId: z.string(), verdict }));
