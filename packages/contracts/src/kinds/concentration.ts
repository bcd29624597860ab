import { z } from 'zod';
import { fault } from '../fault';
import { source } from '../source';

export const concentration = z.object({
  kind: z.literal('concentration'),
  substance: z.enum(['sodium nitrite', 'sodium nitrate', 'sodium erythorbate', 'phosphate'], fault('choose-the-substance')),
  min: z.number().int().min(0).optional(),
  max: z.number().int().min(0).optional(),
  /** Thousandths of a ppm, where hundredths cannot hold the source’s figure. */
  maxThousandths: z.number().int().min(0).optional(),
  /** Figures are of the ion; weighings of the sodium salt are converted. */
  countedAs: z.enum(['NO₂', 'NO₃']).optional(),
  printed: z.string().min(1, fault('as-its-source-prints')),
  source,
});
