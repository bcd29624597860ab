import type { planBatch, ReplyOf } from '@larderbook/contracts';
import type { Rounding } from '@larderbook/haccp';

type Batch = ReplyOf<typeof planBatch>;
type Line = Batch['lines'][number];

/** A restricted ingredient is weighed as the scale shows it, rounded towards the inside of its limit. */
export function toWeigh(line: Line, { doses }: Batch): Line & { inward: Rounding } {
  const dose = doses.find(({ itemName }) => itemName === line.itemName);
  const inward = dose === undefined ? 'nearest' : dose.maxGrams === undefined ? 'up' : 'down';
  return { ...line, grams: dose?.weighGrams ?? line.grams, inward };
}
