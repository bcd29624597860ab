import { z } from 'zod';
import { fault } from '../fault';
import { source } from '../source';

export const attestation = z.object({
  kind: z.literal('attestation'),
  statement: z.string().min(3, fault('statement-to-confirm')),
  asks: z.enum(['moment', 'humidity']).optional(),
  source,
});
