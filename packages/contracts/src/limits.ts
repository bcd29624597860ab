import { z } from 'zod';
import type { CriticalLimit, Support, Verdict } from '@larderbook/haccp';
import { figureUnits, percent, temperatureUnits } from './fields';
import { conditioned } from './limit-conditions';

/** Critical limits and verdicts as they cross the wire; the types are the domain's own. */
const said = z.string().max(1000, 'At most 1000 characters.').optional();
/** What the adopter of a plan says of a figure; whether it is enough is asked when the plan is adopted. */
const support = z.object({ read: said, gap: said, own: said }) satisfies z.ZodType<Support>;
export const source = z.object({
  citation: z.string().min(1),
  edition: z.string(),
  confirmed: z.boolean(),
  url: z.string().optional(),
  support: support.optional(),
});

const hundredths = z.number().int().min(-10_000).max(60_000);
export const printed = z
  .object({ '°F': hundredths.optional(), '°C': hundredths.optional() })
  .refine((figure) => figure['°F'] !== undefined || figure['°C'] !== undefined, 'Give the temperature in at least one unit.');
/** Printed tables of holding times go down to tenths of a second. */
const seconds = z
  .number()
  .min(0)
  .max(30 * 86_400)
  .multipleOf(0.1);
const gap = z
  .number()
  .int()
  .min(1)
  .max(7 * 86_400);

/** Where the source says "above" or "less than", the figure itself is outside. */
const strict = z.object({ min: z.literal('>').optional(), max: z.literal('<').optional() });
/** Hundredths of a log10. */
const log10 = z.number('Give a number of logs.').int().min(1, 'More than zero.').max(2000, 'At most 20 log.');
const degree = z.object({ hundredths, unit: z.enum(temperatureUnits) });
const thousandths = z.number().int().min(0).max(1e9);
const lethalitySet = z.object({
  name: z.string().min(1).max(120),
  organism: z.enum([
    'Salmonella',
    'Listeria monocytogenes',
    'Escherichia coli',
    'Escherichia coli O157',
    'Clostridium perfringens, vegetative',
  ]),
  minutesPerLog: z.number().gt(0).max(10_000),
  referenceCelsius: z.number().min(30).max(130),
  zCelsius: z.number().gt(0).max(30),
  source,
  use: z.enum(['reference', 'comparison', 'mean']),
  note: z.string().max(400),
});
const frozen = z.discriminatedUnion('what', [
  z.object({ what: z.literal('centre') }),
  z.object({
    what: z.literal('freezer'),
    thickness: z.object({ value: z.number('Give the thickness.').gt(0).max(100).multipleOf(0.001), unit: z.enum(['in', 'cm']) }),
  }),
]);

const coolingStage = z.discriminatedUnion('counted', [
  z.object({ from: printed, to: printed, withinSeconds: seconds, counted: z.enum(['stage', 'start']) }),
  z.object({ to: printed, withinSeconds: seconds, counted: z.literal('end of cooking') }),
]);

export const criticalLimit = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('range'),
      measured: z.enum(['temperature', 'pH', 'aw', 'percent']),
      min: z.union([printed, z.number()]).optional(),
      max: z.union([printed, z.number()]).optional(),
      /** Where the source says "above" or "less than", the figure itself is outside. */
      signs: strict.optional(),
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
      rows: z
        .array(z.object({ at: printed, seconds }))
        .min(1)
        .max(60),
      longestGapSeconds: gap,
      source,
    }),
    z.object({
      kind: z.literal('cooling'),
      stages: z.array(coolingStage).min(1).max(6),
      startWithinSeconds: seconds.optional(),
      longestGapSeconds: gap,
      source,
    }),
    z.object({ kind: z.literal('bandTime'), from: printed, to: printed, maxSeconds: seconds, longestGapSeconds: gap, source }),
    z.object({
      kind: z.literal('lethality'),
      set: lethalitySet,
      log10,
      floor: printed,
      authority: z.string().trim().min(3, 'Name the process authority, and where the letter is filed.').max(400),
      longestGapSeconds: gap,
      source,
    }),
    z.object({
      kind: z.literal('growth'),
      species: z.enum(['beef', 'chicken', 'pork', 'mixed or unknown']),
      log10,
      longestGapSeconds: gap,
      source,
    }),
    z.object({
      kind: z.literal('degreeHours'),
      base: degree,
      pH: z.object({ thousandths: z.number().int().min(1).max(14_000) }),
      classes: z
        .array(z.object({ top: degree.optional(), isTopIncluded: z.boolean(), most: z.number().int().min(1).max(100_000) }))
        .min(1)
        .max(8),
      longestGapSeconds: gap,
      source,
    }),
    z.object({ kind: z.literal('weightLoss'), percent: percent(99), source }),
    z.object({ kind: z.literal('freezing'), read: frozen, longestGapSeconds: gap, source }),
    z.object({
      kind: z.literal('figure'),
      of: z.string().trim().min(1, 'Say what is compared.').max(120),
      unit: z.enum(figureUnits),
      min: thousandths.optional(),
      max: thousandths.optional(),
      signs: strict.optional(),
      /** The source calls it useful and asks for none: it fails nothing. */
      advises: z.literal(true).optional(),
      printed: z.string().optional(),
      source,
    }),
    z.object({ kind: z.literal('attestation'), statement: z.string().min(3), asks: z.enum(['moment', 'humidity']).optional(), source }),
  ])
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
