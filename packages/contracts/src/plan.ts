import { pieceShapes, pieceUnits, type Frequency, type Piece } from '@larderbook/haccp';
import { z } from 'zod';
import { criticalLimit } from './limits';
import { id, name, sentence, words } from './fields';
import { instrumentErrors } from './instrument-errors';
import { processes } from './products';
import { everyone, route } from './route';
import { surroundings } from './surroundings';
import { fault } from './fault';

export const hazardKinds = ['biological', 'chemical', 'physical'] as const;

/** `likely` means reasonably likely to occur (9 CFR 417.2(a)). */
export const hazard = z.object({
  kind: z.enum(hazardKinds),
  what: sentence(fault('name-the-hazard')),
  likely: z.boolean(),
  because: words(),
  control: words(),
});
export const step = z.object({ stepId: id, name, hazards: z.array(hazard).max(20) });

export const takenAs = ['value', 'curve', 'weighings', 'attestation'] as const;

/** Thickness, or diameter of something round. A stirred product has none. */
export const piece = z.discriminatedUnion('shape', [
  z.object({ shape: z.literal('stirred') }),
  z.object({
    shape: z.enum(pieceShapes),
    smallest: z.object({
      value: z
        .number(fault('enter-how-thick'))
        .min(0.1, fault('too-thin'))
        .max(2000, fault('no-piece-so-thick'))
        .multipleOf(0.001, fault('at-most-decimals', { most: 3 })),
      unit: z.enum(pieceUnits),
    }),
  }),
]) satisfies z.ZodType<Piece>;

const mostMinutes = 60 * 24 * 31;

/** At least every so many minutes, or so many times in a lot. */
const frequency = z.union([
  z.object({
    everyMinutes: z
      .number(fault('enter-how-many-minutes'))
      .int(fault('whole-minutes'))
      .min(1, fault('one-minute-at-least'))
      .max(mostMinutes, fault('most-31-days')),
  }),
  z.object({
    timesInALot: z
      .number(fault('enter-how-many-times'))
      .int(fault('whole-times'))
      .min(1, fault('once-at-least'))
      .max(1000, fault('at-most-times', { most: 1000 })),
  }),
]) satisfies z.ZodType<Frequency>;

export const controlPoint = z.object({
  controlPointId: id,
  stepId: id,
  name,
  kind: z.enum(['critical', 'prerequisite']),
  hazard: sentence(fault('hazard-it-controls')),
  takenAs: z.enum(takenAs),
  limits: z
    .array(z.object({ limitId: id, limit: criticalLimit }))
    .min(1, fault('one-limit-at-least'))
    .max(6),
  /** Its end or recorded moment starts the clock. For humidity it is the cook. */
  follows: id.optional(),
  probes: z.array(z.string().trim().min(1).max(40)).max(8),
  /** Only of a series: helps to tell when it will be done. */
  surroundings: surroundings.optional(),
  /** Only of a series: tells how fast its core can move. */
  piece: piece.optional(),
  /** Every verdict here allows for these errors, either way. */
  errors: instrumentErrors.optional(),
  /** Hundredths per unit. The person is asked about a value outside. */
  plausible: z
    .object({ '°F': z.tuple([z.number().int(), z.number().int()]), '°C': z.tuple([z.number().int(), z.number().int()]) })
    .optional(),
  /** The review checks this. Without it, only the words say how often. */
  frequency: frequency.optional(),
  monitoring: z.object({
    what: sentence(fault('what-is-measured')),
    how: sentence(fault('how-it-is-measured')),
    howOften: sentence(fault('how-often')),
    who: sentence(fault('by-whom')),
  }),
  correctiveAction: sentence(fault('what-to-do-when-missed')),
  verification: words(),
});
export type ControlPoint = z.output<typeof controlPoint>;

export const planContent = z.object({
  title: name,
  process: z.enum(processes),
  intendedUse: sentence(fault('who-eats-it')),
  steps: z.array(step).min(1, fault('one-step-at-least')).max(60),
  controlPoints: z.array(controlPoint).max(40),
  notes: words(4000),
});
export type PlanContent = z.output<typeof planContent>;

export const plan = z.object({
  planId: z.string(),
  productId: z.string(),
  productName: z.string(),
  version: z.number().int(),
  content: planContent,
  recordedAt: z.string(),
  recordedBy: z.string(),
  adoptedAt: z.string().optional(),
  adoptedBy: z.string().optional(),
  statement: z.string().optional(),
  inForce: z.boolean(),
  /** The plan cannot be adopted while any is left. */
  incomplete: z.array(z.string()),
  /** For example conditions of a source that the plan leaves out. */
  warnings: z.array(z.string()),
  /** Warnings that ask for a reassessment; absent in the answer to a write. */
  reassess: z.array(z.string()).optional(),
  /** Warnings about figures on which the set in use has none. */
  elsewhere: z.array(z.string()).optional(),
});
export type Plan = z.output<typeof plan>;

export const showPlan = route({
  method: 'GET',
  path: '/plans/:planId',
  summary: 'One version of a plan',
  roles: everyone,
  returns: plan,
  problems: ['not-found'],
});
export const recordPlan = route({
  method: 'PUT',
  path: '/plans/:planId',
  summary: 'Write the next version of a product’s plan',
  roles: ['owner'],
  body: z.object({ productId: id, content: planContent }),
  returns: plan,
  problems: ['not-found', 'plan-incomplete', 'sent-differently'],
});
export const adoptPlan = route({
  method: 'PUT',
  path: '/plan-adoptions/:adoptionId',
  summary: 'Sign a plan: it is dated, frozen and in force until another is adopted',
  roles: ['owner'],
  body: z.object({ planId: id, statement: sentence(fault('write-what-you-sign')) }),
  returns: plan,
  problems: ['not-found', 'plan-adopted-already', 'plan-incomplete', 'sent-differently'],
});
export const listStarterPlans = route({
  method: 'GET',
  path: '/starter-plans',
  summary: 'Plans to start from, filled with published figures and their citation',
  roles: everyone,
  returns: z.object({
    starters: z.array(z.object({ process: z.enum(processes), title: z.string(), about: z.string(), content: planContent })),
  }),
  problems: [],
});
export const listPublishedLimits = route({
  method: 'GET',
  path: '/published-limits',
  summary: 'Published limits to choose from, and those of one’s own that count',
  roles: everyone,
  returns: z.object({
    limits: z.array(
      z.object({
        key: z.string(),
        title: z.string(),
        said: z.string(),
        limit: criticalLimit,
        own: z.object({ title: z.string(), edition: z.string() }).optional(),
        /** Absent for published limits, which the product’s own page tells. */
        alsoNeeds: z.array(z.string()).optional(),
      }),
    ),
  }),
  problems: [],
});
export const listControlPoints = route({
  method: 'GET',
  path: '/control-points',
  summary: 'Every control point of the adopted plans',
  roles: everyone,
  returns: z.object({
    controlPoints: z.array(
      z.object({
        controlPointId: z.string(),
        name: z.string(),
        kind: z.enum(['critical', 'prerequisite']),
        productName: z.string(),
        planTitle: z.string(),
      }),
    ),
  }),
  problems: [],
});
