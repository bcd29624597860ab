import type { Finding, Lot } from '@larderbook/contracts';
import type { ReviewData } from '@larderbook/documents';
import { sayPackedSince } from '../lots/where-a-lot-stands';
import { madeBy, personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import type { Telling } from './telling';

/** Oldest first. Only a review that still covers everything clears the lot. */
export async function reviewsOnPaper(tx: Tx, { lotId, review, reviews }: Lot, say: Telling['say']): Promise<ReviewData[]> {
  const rows = await tx.review.findMany({ where: { lotId }, orderBy: [{ recordedAt: 'asc' }, { id: 'asc' }] });
  const names = await personNames(tx);
  return rows.map((row) => ({
    by: madeBy(row, names).name,
    at: row.recordedAt.getTime(),
    cleared: review?.counts === true && review.reviewId === row.id,
    statement: row.statement,
    takenBack: sayTakenBack(
      reviews.find(({ reviewId }) => reviewId === row.id),
      say,
    ),
    soleWorker: row.soleWorker,
    findings: grouped(row.findings as Finding[], say),
  }));
}

const headings = ['control-points-heading', 'to-consider', 'entries-heading'] as const;

/** Groups are those of the page. Findings that were met are left out. */
export function grouped(findings: readonly Finding[], say: Telling['say']): NonNullable<ReviewData['findings']> {
  const worth = findings.filter(({ kind }) => kind !== 'met');
  const under = headings.map((code) => ({
    heading: say(code),
    said: counted(
      worth.filter((found) => headingOf(found) === code),
      say,
    ),
  }));
  return under.filter(({ said }) => said.length > 0);
}

const headingOf = ({ about, kind }: Finding): (typeof headings)[number] => {
  if (about === 'entry') return 'entries-heading';
  return about === 'control-point' && kind !== 'flagged' ? 'control-points-heading' : 'to-consider';
};

function counted(findings: readonly Finding[], say: Telling['say']): string[] {
  const times = new Map<string, number>();
  for (const { what } of findings) times.set(what, (times.get(what) ?? 0) + 1);
  return [...times].map(([what, count]) => (count > 1 ? say('so-many-times', { count: String(count), what }) : what));
}

function sayTakenBack(review: Lot['reviews'][number] | undefined, say: Telling['say']): string | undefined {
  if (!review?.takenBack) return undefined;
  const { what, by, reason } = review.takenBack;
  const covered = say('review-covered', { covered: review.covered });
  const said = reason
    ? say('review-taken-back-because', { what, reason: sentence(reason), who: by })
    : say('review-taken-back-by', { what, who: by });
  return `${said} ${covered}`;
}

/** A person may leave out the full stop. */
const sentence = (said: string): string => (/[.!?]$/.test(said) ? said : `${said}.`);

const sayOutdated = ({ takenBack }: Lot['reviews'][number]): string =>
  takenBack?.reason
    ? `The review was taken back: ${sentence(takenBack.reason)} Review it again.`
    : `${takenBack?.what ?? 'Something was recorded'} after the review was signed. Review it again.`;

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
