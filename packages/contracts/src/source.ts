import { z } from 'zod';
import type { Support } from '@larderbook/haccp';
import { fault } from './fault';

const said = z
  .string()
  .max(1000, fault('at-most-characters', { most: 1000 }))
  .optional();
/** What the adopter of a plan says of a figure; whether it is enough is asked when the plan is adopted. */
const support = z.object({ read: said, gap: said, own: said }) satisfies z.ZodType<Support>;
/** Where a figure comes from. */
export const source = z.object({
  citation: z.string().min(1, fault('name-the-source')),
  edition: z.string(),
  confirmed: z.boolean(),
  url: z.string().optional(),
  support: support.optional(),
});
