import { z } from 'zod';
import { curveFinding } from './curve-findings';
import { pointForecast } from './forecasts';
import { criticalLimit } from './limits';
import { linePart } from './line-part';
import { source } from './source';
import { coded, quantity, verdict, word } from './verdicts';
import { controlPointOnLot } from './control-point-on-lot';
import { takenAs } from './plan';
import { everyone, route } from './route';

const at = z.number();
const phrase = z.union([z.string(), word]);
const points = z.array(z.object({ at, value: z.number() }));

const explainedLimit = z.object({
  limitId: z.string(),
  limit: criticalLimit,
  verdict,
  /** `of` is the verdict told with, where it is not the one above. */
  steps: z.array(z.object({ what: linePart, rule: linePart, putIn: linePart, gives: linePart, of: verdict.optional() })),
  /** `at` is epoch ms, of a reading. */
  restsOn: z.array(
    z.object({
      id: z.string().optional(),
      at: at.optional(),
      probe: z.string().optional(),
      is: linePart,
      role: linePart,
      of: verdict.optional(),
    }),
  ),
  assumptions: z.array(coded),
  rescue: z.array(coded),
  sources: z.array(source),
  cautions: z.array(coded),
});

/** Temperatures in `unit` are for the eye only. Instants are epoch ms. */
const drawing = z.object({
  unit: z.enum(['°C', '°F']),
  probes: z.array(z.object({ probe: z.string(), points })),
  surroundings: points,
  lines: z.array(z.object({ label: linePart, value: z.number(), band: z.tuple([z.number(), z.number()]).optional() })),
  stages: z.array(
    z.object({
      label: linePart,
      startAt: at,
      endAt: at.optional(),
      deadline: at.optional(),
      kind: z.enum(['met', 'missed', 'undetermined', 'running']),
    }),
  ),
  crossings: z.array(z.object({ label: quantity, value: z.number(), after: at, by: at, straight: at, chilled: at.optional() })),
  lethality: z.array(z.object({ name: phrase, found: coded, points: z.array(z.object({ at, log10: z.number() })) })),
  arrival: z
    .object({
      label: quantity,
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
  judgedBy: z.enum(['printed row', 'no holding time needed', 'nothing yet']),
  figures: z.array(
    z.object({
      /** Half logs, capped, for a screen. */
      found: coded,
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
  rowsInAll: z.array(word),
  conditions: z.array(coded),
});

const log10 = z.object({ noLag: z.number(), withLag: z.number() });
const growth = z.object({
  as: z.enum(['uncured', 'worst case, as if uncured']),
  estimate: z
    .object({
      /** A class, for a screen. */
      found: coded,
      class: z.string(),
      across: z.string(),
      probe: z.string(),
      name: z.string(),
      version: z.string(),
      model: z.string(),
      source,
      byStraightLines: log10,
      atMost: log10,
      unseen: z.array(z.enum(['before the first reading', 'after the last reading'])),
    })
    .optional(),
  undetermined: z.object({ because: coded, next: coded }).optional(),
  claim: coded,
  notes: z.array(coded),
  underCure: z
    .object({
      because: coded,
      next: coded,
      published: z.array(z.object({ what: coded, seen: coded, citation: z.string(), confirmed: z.boolean() })),
    })
    .optional(),
  cautions: z.array(coded),
});

const explainedSeries = z.object({
  drawing,
  used: z.number().int(),
  leftOut: z.number().int(),
  findings: z.array(curveFinding),
  forecast: pointForecast.optional(),
  lethality: lethality.optional(),
  growth: growth.optional(),
});
export type ExplainedSeries = z.output<typeof explainedSeries>;

const pointExplained = z.object({
  lotId: z.string(),
  lotCode: z.string(),
  productName: z.string(),
  controlPointId: z.string(),
  name: z.string(),
  takenAs: z.enum(takenAs),
  stands: controlPointOnLot.shape.stands,
  endedAt: z.string().optional(),
  /** The plan's own words. */
  asked: z.array(z.object({ limitId: z.string(), said: z.string(), source })),
  /** Empty while nothing was recorded. */
  limits: z.array(explainedLimit),
  /** Only of a curve. */
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
