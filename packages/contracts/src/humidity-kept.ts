import { z } from 'zod';
import type { HumidityKept } from '@larderbook/haccp';
import { instant, mass, temperature } from './fields';
import { fault } from './fault';

const timed = {
  /** `from` is when it began to be humid; `minutes` is how long in all. */
  intoOven: instant,
  from: instant,
  minutes: z
    .number(fault('give-the-minutes'))
    .int(fault('whole-minutes'))
    .min(1, fault('one-minute-at-least'))
    .max(72 * 60, fault('most-three-days')),
};
const percent = z
  .number(fault('give-the-humidity'))
  .min(0)
  .max(100)
  .refine((value) => Math.round(value * 10) / 10 === value, fault('at-most-decimals', { most: 1 }));

export const humidityKept = z.discriminatedUnion('how', [
  z.object({ how: z.enum(['live steam', 'sealed oven']), ...timed }),
  z.object({ how: z.enum(['humid for a quarter', 'humid throughout']), ...timed, percent }),
  z.object({ how: z.literal('large piece in a hot oven'), oven: temperature, piece: mass }),
  z.object({ how: z.literal('moisture-proof bag') }),
]) satisfies z.ZodType<HumidityKept>;
