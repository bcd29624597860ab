import { z } from 'zod';
import type { Support } from '@larderbook/haccp';
import { fault } from './fault';

const said = z
  .string()
  .max(1000, fault('at-most-characters', { most: 1000 }))
  .optional();
/** The adopter writes this; adopting the plan asks whether it is enough. */
const support = z.object({ read: said, gap: said, own: said }) satisfies z.ZodType<Support>;
export const source = z.object({
  citation: z.string().min(1, fault('name-the-source')),
  edition: z.string(),
  confirmed: z.boolean(),
  url: z.string().optional(),
  support: support.optional(),
});
