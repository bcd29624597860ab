import { z } from 'zod';
import type { Calculation } from '@larderbook/haccp';
import { source } from './source';
import { criticalLimit } from './limits';
import { linePart } from './line-part';
import { coded, verdict } from './verdicts';
import { everyone, route } from './route';
import { fault } from './fault';

const fact = z.object({ what: linePart, is: linePart });

/** Codes and figures, never a record. */
export const calculation = z.object({
  given: z.array(fact),
  steps: z.array(z.object({ what: linePart, rule: linePart, putIn: linePart, gives: linePart })),
  results: z.array(fact.extend({ value: z.number().optional(), unit: z.string().optional() })),
  judged: z.array(z.object({ verdict, limit: criticalLimit.optional() })),
  notes: z.array(coded),
  sources: z.array(source),
  grounds: z.array(coded),
  cautions: z.array(coded),
}) satisfies z.ZodType<Calculation>;

export const typedNumber = (least: number, most: number, decimals = 3) =>
  z
    .number(fault('give-a-number'))
    .min(least, fault('not-below', { least }))
    .max(most, fault('not-above', { most }))
    .refine((value) => Number(value.toFixed(decimals)) === value, fault('at-most-decimals', { most: decimals }));

export const publishedKey = z.string().min(1, fault('choose-published-limit')).max(80);

export const calculator = <const N extends string, const B extends z.ZodObject>(name: N, summary: string, body: B) =>
  route({
    method: 'POST',
    path: `/calculators/${name}`,
    summary: `${summary}. Calculated, not recorded`,
    roles: everyone,
    body,
    returns: calculation,
    problems: ['cannot-be-calculated'],
  });
