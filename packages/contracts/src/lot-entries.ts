import { z } from 'zod';
import { clarification } from './clarifications';
import { flagList, madeBy, massReply, readingUnits } from './fields';
import { humidityKept } from './humidity-kept';
import { judged } from './limits';

const made = {
  flags: flagList,
  made: madeBy,
  /** A later row corrects this one. */
  amendedBy: z.string().optional(),
  amends: z.string().optional(),
  reason: z.string(),
  /** A voided entry counts for nothing. */
  voided: z.object({ reason: z.string(), made: madeBy }).optional(),
};

export const lotInput = z.object({
  inputId: z.string(),
  from: z.object({
    receiptId: z.string().optional(),
    lotId: z.string().optional(),
    code: z.string(),
    what: z.string(),
    supplier: z.string().optional(),
    supplierLot: z.string().optional(),
  }),
  weight: massReply,
  trimmed: massReply,
  ...made,
});
export const weighing = z.object({
  weighingId: z.string(),
  item: z.object({ itemId: z.string(), name: z.string() }),
  /** Present where the delivery was corrected to another item since. */
  itemBefore: z.string().optional(),
  receipt: z.object({ receiptId: z.string(), code: z.string(), supplierLot: z.string() }).optional(),
  weight: massReply,
  /** What the delivery is now known to hold. */
  fractionPercent: z.number().optional(),
  /** What was known at the weighing, where it no longer counts. */
  fractionBefore: z.number().optional(),
  targetGrams: z.number().optional(),
  controlPointId: z.string().optional(),
  judged: z.array(judged),
  ...made,
});
export const reading = z.object({
  readingId: z.string(),
  controlPointId: z.string(),
  probe: z.string(),
  instrument: z.object({ instrumentId: z.string(), name: z.string() }).optional(),
  entered: z.union([
    z.object({ value: z.number(), unit: z.enum(readingUnits) }),
    z.object({ answer: z.boolean(), seen: z.string(), humidity: humidityKept.optional() }),
  ]),
  judged: z.array(judged),
  deviationId: z.string().optional(),
  /** Oldest first; the last counts. */
  clarifications: z.array(clarification).optional(),
  ...made,
});
export const removal = z.object({
  removalId: z.string(),
  rowId: z.string(),
  kind: z.string(),
  weight: massReply,
  note: z.string(),
  made: madeBy,
});
