import { z } from 'zod';
import type { InstrumentErrors } from '@larderbook/haccp';
import { massUnits, temperatureUnits } from './fields';

const ofScale = z.object({ thousandths: z.number().int().min(1).max(1_000_000), unit: z.enum(massUnits) });

/** Instruments may err either way, and every verdict takes the worse. */
export const instrumentErrors = z.object({
  temperature: z.object({ hundredths: z.number().int().min(1).max(1000), unit: z.enum(temperatureUnits) }).optional(),
  /** For each weighing, on the scale for ingredients and marked pieces. */
  mass: ofScale.extend({ step: z.number().int().min(1).max(1_000_000).optional() }).optional(),
  /** For each weighing, on the scale for meat. */
  meat: ofScale.optional(),
  pH: z.object({ thousandths: z.number().int().min(1).max(2000) }).optional(),
  aw: z.object({ thousandths: z.number().int().min(1).max(200) }).optional(),
}) satisfies z.ZodType<InstrumentErrors>;
