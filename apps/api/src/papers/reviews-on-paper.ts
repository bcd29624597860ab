import type { Finding, Lot } from '@larderbook/contracts';
import type { ReviewData } from '@larderbook/documents';
import { sayPackedSince } from '../lots/where-a-lot-stands';
import { madeBy, personNames } from '../shop/person-names';
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
    findings: grouped(row.findings as Finding[]),
  }));
}

const headings = ['Control points', 'To consider', 'Entries'] as const;

/** Grouped as on the page of the review; what was met needs no words, and alike ones are counted. */
export function grouped(findings: readonly Finding[]): NonNullable<ReviewData['findings']> {
  const worth = findings.filter(({ kind }) => kind !== 'met');
  const under = headings.map((heading) => ({ heading, said: counted(worth.filter((found) => headingOf(found) === heading)) }));
  return under.filter(({ said }) => said.length > 0);
}

const headingOf = ({ about, kind }: Finding): (typeof headings)[number] => {
  if (about === 'entry') return 'Entries';
  return about === 'control-point' && kind !== 'flagged' ? 'Control points' : 'To consider';
};

function counted(findings: readonly Finding[]): string[] {
  const times = new Map<string, number>();
  for (const { what } of findings) times.set(what, (times.get(what) ?? 0) + 1);
  return [...times].map(([what, count]) => (count > 1 ? `${count} times: ${what}` : what));
}

function sayTakenBack(review: Lot['reviews'][number] | undefined): string | undefined {
  if (!review?.takenBack) return undefined;
  const { what, by, reason } = review.takenBack;
  return `${reason ? `${what}: ${sentence(reason)} By` : `${what}, by`} ${by}. It covered ${review.covered}.`;
}

/** People do not always end a sentence. */
const sentence = (said: string): string => (/[.!?]$/.test(said) ? said : `${said}.`);

const sayOutdated = ({ takenBack }: Lot['reviews'][number]): string =>
  takenBack?.reason
    ? `The review was taken back: ${sentence(takenBack.reason)} Review it again.`
    : `${takenBack?.what ?? 'Something was recorded'} after the review was signed. Review it again.`;

/** What still stands in the way of clearing a lot. */
export function outstandingOf({ review, standing }: Lot, found: readonly Finding[]): string[] {
  const open = found.filter(({ blocks }) => blocks).map(({ what, next }) => [what, next].filter(Boolean).join(' '));
  const outdated =
    review && !review.counts && standing !== 'shipped'
      ? [sayOutdated(review)]
      : review && review.packedSince > 0
        ? [sayPackedSince(review.packedSince)]
        : [];
  return [...open, ...outdated];
}
