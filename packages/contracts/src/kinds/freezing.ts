import { z } from 'zod';
import { gap } from '../limit-fields';
import { source } from '../source';
import { fault } from '../fault';

const read = z.discriminatedUnion('what', [
  z.object({ what: z.literal('centre') }),
  z.object({
    what: z.literal('freezer'),
    thickness: z.object({ value: z.number(fault('give-the-thickness')).gt(0).max(100).multipleOf(0.001), unit: z.enum(['in', 'cm']) }),
  }),
]);

export const freezing = z.object({ kind: z.literal('freezing'), read, longestGapSeconds: gap, source });
