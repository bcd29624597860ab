import { z } from 'zod';
import type { LinePart, Sum } from '@larderbook/haccp';
import { temperatureUnits } from './fields';
import { criticalLimit } from './limits';
import { coded, plainFigure } from './verdicts';

const byVerdict = z.object({ verdict: z.enum(['measured', 'limit', 'because', 'margin and because', 'kind and margin']) });
const sum = z.object({ sum: z.array(z.union([coded, byVerdict, plainFigure])) }) satisfies z.ZodType<Sum>;

/** Whoever shows these codes and figures puts them into words. */
export const linePart = z.union([
  coded,
  sum,
  z.object({ limit: criticalLimit, unit: z.enum(temperatureUnits).optional() }),
  byVerdict,
  plainFigure,
]) satisfies z.ZodType<LinePart>;
