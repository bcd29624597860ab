import { z } from 'zod';
import type { PointForecast } from '@larderbook/haccp';
import { coded, quantity } from './verdicts';

const expected = z.enum(['on course', 'at risk', 'will miss', 'expected']);
const early = z.enum(['undetermined', 'too early to tell', 'reached']);
const common = {
  /** No lot is accepted on a forecast, and no verdict rests on it. */
  use: z.literal('advice, never acceptance'),
  limitId: z.string(),
  /** For example 40 °F. */
  target: quantity,
  /** Epoch ms. */
  by: z.number().optional(),
  because: z.array(coded),
  next: z.array(coded),
  probe: z.string().optional(),
};

/** Instants are epoch ms; absent where the bound may never be reached. */
export const pointForecast = z.union([
  z.object({
    ...common,
    state: expected,
    arrival: z.object({ best: z.number().optional(), earliest: z.number().optional(), latest: z.number().optional() }),
    medium: z.object({ celsius: z.number(), from: z.enum(['measured', 'worked out from the readings', 'set point']) }),
    takeMoreReadings: z.boolean(),
    restartedAt: z.number().optional(),
  }),
  z.object({ ...common, state: early }),
]) satisfies z.ZodType<PointForecast>;
