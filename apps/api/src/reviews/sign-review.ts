import { Injectable } from '@nestjs/common';
import type { Finding, InputOf, ReplyOf, signReview } from '@larderbook/contracts';
import { RULES_VERSION } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { showReview } from './show-review';

/** Kept with what the reviewer saw. A sole worker may sign for their own records, and the record says so. */
@Injectable()
export class SignReview {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof signReview>, by: Person): Promise<ReplyOf<typeof signReview>> {
    const { reviewId, lotId, statement } = input;
    return this.once.run(by, { id: reviewId, kind: 'review', subject: lotId, request: input }, async (tx, at) => {
      const { findings, ready, maySign, whyNot, soleWorker } = await showReview(tx, lotId, by, at);
      if (!ready) throw incomplete(findings);
      if (!maySign) throw new Problem('own-records', whyNot && told(whyNot));

      const row = {
        establishmentId: by.establishmentId,
        id: reviewId,
        lotId,
        findings,
        statement,
        soleWorker,
        rulesVersion: RULES_VERSION,
        recordedAt: at,
        recordedBy: by.personId,
      };
      const { count } = await tx.review.createMany({ data: [row], skipDuplicates: true });
      if (count === 0) throw new Problem('sent-differently');
      return { reviewId, lotId };
    });
  }
}

function incomplete(findings: Finding[]): Problem {
  const blocking = findings.filter(({ blocks }) => blocks);
  const said = blocking.map(({ what, next = [] }) => told('review-found', { found: [...what, ...next] }));
  const errors = blocking.map(({ what, about }) => ({ pointer: `#/${about}`, ...told('review-found', { found: what }) }));
  return new Problem('review-incomplete', said, errors);
}
