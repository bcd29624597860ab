import { z } from 'zod';
import { massReply } from './fields';
import { namedDeviation, whichProduct } from './named-deviation';

/** Holding product longer decides nothing, so it is no decision. */
export const decisions = ['release', 'rework', 'condemn', 'return', 'recall'] as const;
export type Decision = (typeof decisions)[number];
export const releaseBases = ['process authority', 'test result', 'worked on and measured again', 'document on file'] as const;

/** `at` is when the person says it was destroyed. */
const destruction = z.object({
  destructionId: z.string(),
  method: z.string(),
  by: z.string(),
  at: z.string(),
  recordedAt: z.string(),
});
/** What is voided is shown struck through. */
export const voiding = z.object({
  how: z.enum(['corrected', 'voided', 'taken back']),
  reason: z.string(),
  by: z.string(),
  at: z.string(),
});
export type Voiding = z.output<typeof voiding>;

/** A decision may speak for several deviations. */
export const disposition = z.object({
  dispositionId: z.string(),
  decision: z.enum(decisions),
  ...whichProduct,
  weight: massReply,
  reason: z.string(),
  /** Only of a release. */
  basis: z.enum(releaseBases).optional(),
  speaksFor: z.array(z.object(namedDeviation)),
  by: z.string(),
  at: z.string(),
  /** Condemned or called back, held apart, and not yet destroyed. */
  toDestroy: z.boolean(),
  destruction: destruction.optional(),
  voidedDestructions: z.array(destruction.extend({ voided: voiding })),
  /** Another decision took its place, or its product is undecided again. */
  voided: voiding.optional(),
});
export type Disposition = z.output<typeof disposition>;
