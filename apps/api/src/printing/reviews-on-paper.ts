import type { Finding, Lot } from '@larderbook/contracts';
import type { ReviewData } from '@larderbook/documents';
import { madeBy, personNames } from '../people/person-names';
import type { Tx } from '../platform/database';

/** Every review of a lot, oldest first. Only the one that still covers all that is recorded clears it. */
export async function reviewsOnPaper(tx: Tx, { lotId, review, reviews }: Lot): Promise<ReviewData[]> {
  const rows = await tx.review.findMany({ where: { lotId }, orderBy: [{ recordedAt: 'asc' }, { id: 'asc' }] });
  const names = await personNames(tx);
  return rows.map((row) => ({
    by: madeBy(row, names).name,
    at: row.recordedAt.getTime(),
    cleared: review?.counts === true && review.reviewId === row.id,
    statement: row.statement,
    takenBack: sayTakenBack(reviews.find(({ reviewId }) => reviewId === row.id)),
    soleWorker: row.soleWorker,
    findings: (row.findings as Finding[]).filter(({ kind }) => kind !== 'met').map(({ what }) => what),
  }));
}

const sayTakenBack = (review: Lot['reviews'][number] | undefined): string | undefined =>
  review?.takenBack && `${review.takenBack.what}, by ${review.takenBack.by}. It covered ${review.covered}.`;

/** What still stands in the way of clearing a lot. */
export function outstandingOf({ review, standing }: Lot, found: readonly Finding[]): string[] {
  const open = found.filter(({ blocks }) => blocks).map(({ what, next }) => [what, next].filter(Boolean).join(' '));
  const outdated =
    review && !review.counts && standing !== 'shipped'
      ? [`${review.takenBack?.what ?? 'Something was recorded'} after the review was signed. Review it again.`]
      : [];
  return [...open, ...outdated];
}
