import { z } from 'zod';
import type { InstrumentErrors } from '@larderbook/haccp';
import { massUnits, temperatureUnits } from './fields';

const ofScale = z.object({ thousandths: z.number().int().min(1).max(1_000_000), unit: z.enum(massUnits) });

/** What the instruments of a control point may be wrong by, either way: every verdict there takes the worse. */
export const instrumentErrors = z.object({
  temperature: z.object({ hundredths: z.number().int().min(1).max(1000), unit: z.enum(temperatureUnits) }).optional(),
  /** Of the scale for ingredients and marked pieces, in each weighing. */
  mass: ofScale.extend({ step: z.number().int().min(1).max(1_000_000).optional() }).optional(),
  /** Of the scale for meat, in each weighing. */
  meat: ofScale.optional(),
  pH: z.object({ thousandths: z.number().int().min(1).max(2000) }).optional(),
  aw: z.object({ thousandths: z.number().int().min(1).max(200) }).optional(),
}) satisfies z.ZodType<InstrumentErrors>;
