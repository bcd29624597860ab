import { z } from 'zod';

/** Exactly one of lot and delivery is named. */
export const whichProduct = { lotId: z.string().optional(), receiptId: z.string().optional(), code: z.string() };
export const namedDeviation = { deviationId: z.string(), number: z.number().int() };
