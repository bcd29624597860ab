import { z } from 'zod';
import type { HumidityKept } from '@larderbook/haccp';
import { instant, mass, temperature } from './fields';

const timed = {
  /** When the product went into the heated oven, when it began to be humid, and for how many minutes in all. */
  intoOven: instant,
  from: instant,
  minutes: z
    .number('Give the minutes.')
    .int('Whole minutes.')
    .min(1, 'At least one minute.')
    .max(72 * 60, 'At most three days.'),
};
const percent = z
  .number('Give the relative humidity.')
  .min(0)
  .max(100)
  .refine((value) => Math.round(value * 10) / 10 === value, 'At most one decimal.');

/** How humidity was kept while cooking, with the times and values that its option is judged by. */
export const humidityKept = z.discriminatedUnion('how', [
  z.object({ how: z.enum(['live steam', 'sealed oven']), ...timed }),
  z.object({ how: z.enum(['humid for a quarter', 'humid throughout']), ...timed, percent }),
  z.object({ how: z.literal('large piece in a hot oven'), oven: temperature, piece: mass }),
  z.object({ how: z.literal('moisture-proof bag') }),
]) satisfies z.ZodType<HumidityKept>;
