import { z } from 'zod';
import { flagList, madeBy, massReply } from './fields';

export const packing = z.object({
  packingId: z.string(),
  /** A correction names this row. */
  rowId: z.string(),
  code: z.string(),
  lotId: z.string(),
  lotCode: z.string(),
  productName: z.string(),
  count: z.number().int(),
  left: z.number().int(),
  net: massReply,
  useBy: z.string(),
  flags: flagList,
  made: madeBy,
});
