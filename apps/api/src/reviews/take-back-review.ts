import { Injectable } from '@nestjs/common';
import type { InputOf, ReplyOf, takeBackReview } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { whereLotsStand } from '../lots/where-a-lot-stands';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/** The lot is no longer cleared until its review is signed again. */
@Injectable()
export class TakeBackReview {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof takeBackReview>, by: Person): Promise<ReplyOf<typeof takeBackReview>> {
    const { takingBackId, reviewId, reason } = input;
    const sent = { id: takingBackId, kind: 'review-taken-back', subject: reviewId, request: input };
    return this.once.run(by, sent, async (tx, at) => {
      await checkCounts(tx, reviewId, by);
      await tx.reviewTakenBack.create({ data: { ...keptBy(by, at), id: takingBackId, reviewId, reason } });
      return { takingBackId };
    });
  }
}

/** Only its signer or the owner may take back a review, and only the latest. */
async function checkCounts(tx: Tx, reviewId: string, by: Person): Promise<void> {
  const review = await tx.review.findFirst({ where: { id: reviewId }, select: { lotId: true, recordedBy: true } });
  if (!review) throw new Problem('not-found', told('no-such-review'));
  if (review.recordedBy !== by.personId && !by.roles.includes('owner')) throw new Problem('not-allowed', told('taken-back-by-its-signer'));
  const stands = (await whereLotsStand(tx, [review.lotId])).get(review.lotId);
  if (!stands?.reviewCounts || stands.reviews.at(-1)?.reviewId !== reviewId) throw new Problem('taken-back-already');
}
