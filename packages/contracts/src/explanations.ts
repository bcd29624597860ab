import { z } from 'zod';
import { curveFinding } from './curve-findings';
import { pointForecast } from './forecasts';
import { criticalLimit } from './limits';
import { source } from './source';
import { coded, verdict } from './verdicts';
import { controlPointOnLot } from './lots';
import { takenAs } from './plan';
import { everyone, route } from './route';

const at = z.number();
const points = z.array(z.object({ at, value: z.number() }));

/** How one limit was judged: the verdict as everywhere else, and what it came about by. */
export const explainedLimit = z.object({
  limitId: z.string(),
  limit: criticalLimit,
  verdict,
  steps: z.array(z.object({ what: z.string(), rule: z.string(), putIn: z.string(), gives: z.string() })),
  /** The records it rests on; `at` in epoch ms, where it is a reading. */
  restsOn: z.array(
    z.object({
      id: z.string().optional(),
      at: at.optional(),
      probe: z.string().optional(),
      said: z.string(),
      role: z.string(),
    }),
  ),
  assumptions: z.array(z.string()),
  rescue: z.array(z.string()),
  sources: z.array(source),
  cautions: z.array(z.string()),
});

/** One picture for screen and paper; temperatures in `unit`, for the eye only. Instants are epoch ms. */
export const drawing = z.object({
  unit: z.enum(['°C', '°F']),
  probes: z.array(z.object({ probe: z.string(), points })),
  /** What was read of what the product lies in. */
  surroundings: points,
  lines: z.array(z.object({ label: z.string(), value: z.number(), band: z.tuple([z.number(), z.number()]).optional() })),
  stages: z.array(
    z.object({
      label: z.string(),
      startAt: at,
      endAt: at.optional(),
      deadline: at.optional(),
      kind: z.enum(['met', 'missed', 'undetermined', 'running']),
    }),
  ),
  crossings: z.array(z.object({ label: z.string(), value: z.number(), after: at, by: at, straight: at, chilled: at.optional() })),
  lethality: z.array(z.object({ name: z.string(), said: z.string(), points: z.array(z.object({ at, log10: z.number() })) })),
  /** Earliest to latest expected arrival of a running stage at its bound. */
  arrival: z
    .object({
      label: z.string(),
      value: z.number(),
      earliest: at.optional(),
      best: at.optional(),
      latest: at.optional(),
      deadline: at.optional(),
      state: z.string(),
    })
    .optional(),
});
export type DrawingReply = z.output<typeof drawing>;

const lethality = z.object({
  label: z.string(),
  judgedBy: z.string(),
  figures: z.array(
    z.object({
      /** In half logs and capped: what a screen shows. */
      said: z.string(),
      probe: z.string(),
      name: z.string(),
      organism: z.string(),
      minutesPerLog: z.number(),
      referenceCelsius: z.number(),
      zCelsius: z.number(),
      floorCelsius: z.number(),
      note: z.string(),
      source,
      byStraightLines: z.number(),
      atLeast: z.number(),
    }),
  ),
  rowsInAll: z.array(z.string()),
  conditions: z.array(z.string()),
});

const log10 = z.object({ noLag: z.number(), withLag: z.number() });
const growth = z.object({
  as: z.string(),
  estimate: z
    .object({
      /** In classes: what a screen shows. The exact figures stand beside it. */
      said: z.string(),
      class: z.string(),
      across: z.string(),
      probe: z.string(),
      name: z.string(),
      version: z.string(),
      model: z.string(),
      source,
      byStraightLines: log10,
      atMost: log10,
      unseen: z.array(z.string()),
    })
    .optional(),
  undetermined: z.object({ because: z.string(), next: z.string() }).optional(),
  claim: z.string(),
  notes: z.array(coded),
  underCure: z
    .object({
      because: z.string(),
      next: z.string(),
      published: z.array(z.object({ what: coded, seen: coded, citation: z.string(), confirmed: z.boolean() })),
    })
    .optional(),
  cautions: z.array(z.string()),
});

/** What is said once of a series, whatever its limits are. */
export const explainedSeries = z.object({
  drawing,
  used: z.number().int(),
  leftOut: z.number().int(),
  findings: z.array(curveFinding),
  forecast: pointForecast.optional(),
  lethality: lethality.optional(),
  growth: growth.optional(),
});
export type ExplainedSeries = z.output<typeof explainedSeries>;

export const pointExplained = z.object({
  lotId: z.string(),
  lotCode: z.string(),
  productName: z.string(),
  controlPointId: z.string(),
  name: z.string(),
  takenAs: z.enum(takenAs),
  stands: controlPointOnLot.shape.stands,
  endedAt: z.string().optional(),
  /** What the plan asks for, whether anything was recorded or not. */
  asked: z.array(z.object({ limitId: z.string(), said: z.string(), source })),
  /** Empty while nothing was recorded. */
  limits: z.array(explainedLimit),
  /** Of a curve. */
  series: explainedSeries.optional(),
});
export type PointExplained = z.output<typeof pointExplained>;

export const explainPoint = route({
  method: 'GET',
  path: '/lots/:lotId/explanations/:controlPointId',
  summary: 'How a control point of a lot was judged',
  roles: everyone,
  returns: pointExplained,
  problems: ['not-found'],
});
