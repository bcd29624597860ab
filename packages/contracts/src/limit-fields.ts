import { z } from 'zod';
import { temperatureUnits } from './fields';
import { fault } from './fault';

const hundredths = z.number(fault('give-a-number')).int().min(-10_000).max(60_000);
export const printed = z
  .object({ '°F': hundredths.optional(), '°C': hundredths.optional() })
  .refine((figure) => figure['°F'] !== undefined || figure['°C'] !== undefined, fault('temperature-in-one-unit'));
/** Printed tables of holding times go down to tenths of a second. */
export const seconds = z
  .number(fault('length-of-time'))
  .min(0, fault('length-of-time'))
  .max(30 * 86_400, fault('length-of-time'))
  .multipleOf(0.1);
export const gap = z
  .number(fault('gap-of-readings'))
  .int(fault('gap-of-readings'))
  .min(1, fault('gap-of-readings'))
  .max(7 * 86_400, fault('gap-of-readings'));
/** Where the source says "above" or "less than", the figure itself is outside. */
export const strict = z.object({ min: z.literal('>').optional(), max: z.literal('<').optional() });
/** Hundredths of a log10. */
export const log10 = z.number(fault('number-of-logs')).int().min(1, fault('above-zero')).max(2000, fault('most-twenty-logs'));
export const degree = z.object({ hundredths, unit: z.enum(temperatureUnits) });
