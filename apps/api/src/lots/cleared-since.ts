import type { RecordSince } from './records-since-review.queries';
import type { ReviewStands } from './taken-back';

/**
 * By lasting id of the packing; undefined when no standing review has seen it (9 CFR 417.5(c)). A shipment counts by
 * the review it left under.
 */
export type ClearedSince = (packingId: string, shippedSeq?: bigint) => Date | undefined;

/** A review covers what was packed before it, until something takes it back. */
export function clearedSince(since: readonly RecordSince[], reviews: readonly ReviewStands[]): ClearedSince {
  const packedAt = new Map(since.flatMap(({ kind, amendsId, id, seq }) => (kind === 'packing' && !amendsId ? [[id, seq]] : [])));
  const signed = reviews.flatMap((review) => {
    const { seq, at } = since.find(({ id }) => id === review.reviewId) ?? {};
    return seq !== undefined && at ? [{ seq, at, isTakenBack: review.takenBack !== undefined }] : [];
  });
  return (packingId, shippedSeq) => {
    const packed = packedAt.get(packingId) ?? 0n;
    const newestFirst = signed.filter(({ seq }) => shippedSeq === undefined || seq < shippedSeq).reverse();
    let at: Date | undefined;
    for (const [index, review] of newestFirst.entries()) {
      const isLeftUnder = index === 0 && shippedSeq !== undefined;
      if ((review.isTakenBack && !isLeftUnder) || review.seq < packed) break;
      at = review.at;
    }
    return at;
  };
}
