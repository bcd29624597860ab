import { z } from 'zod';
import type { LinePart, Sum } from '@larderbook/haccp';
import { temperatureUnits } from './fields';
import { criticalLimit } from './limits';
import { coded, plainFigure, quantity } from './verdicts';

const sum = z.object({ sum: z.array(z.union([z.string(), z.number(), quantity, coded])) }) satisfies z.ZodType<Sum>;

/** What stands in a line of a working, as codes and figures: whoever shows it puts it into words. */
export const linePart = z.union([
  coded,
  sum,
  z.object({ limit: criticalLimit, unit: z.enum(temperatureUnits).optional() }),
  z.object({ verdict: z.enum(['measured', 'limit', 'because', 'margin and because']) }),
  plainFigure,
]) satisfies z.ZodType<LinePart>;
