import { z } from 'zod';
import type { LimitCondition } from '@larderbook/haccp';
import { fault } from './fault';

/** Whole thousandths of a ppm or of a percent. */
const least = z.number(fault('give-the-amount')).int().min(1, fault('above-zero')).max(1_000_000_000);
const per = z.enum(['meat block', 'batch']);

/** Adopting the plan affirms statement and support; the others are worked out from the formula. */
export const conditionOfLimit = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('nitrite'), least, per }),
  z.object({ kind: z.literal('accelerator'), least, per }),
  z.object({ kind: z.literal('salt in water phase'), least, formula: z.enum(['salt/(salt+water)', 'salt/water']) }),
  z.object({ kind: z.literal('statement'), says: z.string().trim().min(3, fault('what-has-to-hold')).max(1000) }),
  z.object({ kind: z.literal('support'), says: z.string().trim().min(3, fault('what-has-support')).max(1000) }),
]) satisfies z.ZodType<LimitCondition>;

export const conditioned = z.object({ conditions: z.array(conditionOfLimit).max(12).optional() });
