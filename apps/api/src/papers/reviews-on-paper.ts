import type { Account, Finding, Lot } from '@larderbook/contracts';
import type { ReviewData } from '@larderbook/documents';
import { canonicalJson } from '@larderbook/haccp';
import { packedAfterIt } from '../lots/stand';
import { ended, sentence } from '../platform/account';
import { madeBy, personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import type { Telling } from './telling';

/** Oldest first. Only a review that still covers everything clears the lot. */
export async function reviewsOnPaper(tx: Tx, { lotId, review, reviews }: Lot, telling: Telling): Promise<ReviewData[]> {
  const rows = await tx.review.findMany({ where: { lotId }, orderBy: { seq: 'asc' } });
  const names = await personNames(tx);
  return rows.map((row) => ({
    by: madeBy(row, names).name,
    at: row.recordedAt.getTime(),
    cleared: review?.counts === true && review.reviewId === row.id,
    statement: row.statement,
    takenBack: sayTakenBack(
      reviews.find(({ reviewId }) => reviewId === row.id),
      telling,
    ),
    soleWorker: row.soleWorker,
    findings: grouped(row.findings as Finding[], telling),
  }));
}

const headings = ['control-points-heading', 'to-consider', 'entries-heading'] as const;

/** Groups are those of the page. Findings that were met are left out. */
function grouped(findings: readonly Finding[], telling: Telling): NonNullable<ReviewData['findings']> {
  const worth = findings.filter(({ kind }) => kind !== 'met');
  const under = headings.map((code) => ({
    heading: telling.say(code),
    said: counted(
      worth.filter((found) => headingOf(found) === code),
      telling,
    ),
  }));
  return under.filter(({ said }) => said.length > 0);
}

const headingOf = ({ about, kind }: Finding): (typeof headings)[number] => {
  if (about === 'entry') return 'entries-heading';
  return about === 'control-point' && kind !== 'flagged' ? 'control-points-heading' : 'to-consider';
};

function counted(findings: readonly Finding[], { say, account }: Telling): string[] {
  const alike = new Map<string, { what: string; count: number }>();
  for (const { what } of findings) {
    const { count } = alike.get(canonicalJson(what)) ?? { count: 0 };
    alike.set(canonicalJson(what), { what: account(what), count: count + 1 });
  }
  return [...alike.values()].map(({ what, count }) => (count > 1 ? say('so-many-times', { count: String(count), what }) : what));
}

function sayTakenBack(review: Lot['reviews'][number] | undefined, { say, account }: Telling): string | undefined {
  if (!review?.takenBack) return undefined;
  const { what, by: who, reason } = review.takenBack;
  const covered = say('review-covered', review.covered);
  const said = reason
    ? say('review-taken-back-because', { reason: ended(reason), who })
    : say('review-taken-back-by', { what: account([what]), who });
  return `${said} ${covered}`;
}

export function outstandingOf({ review, standing }: Lot, found: readonly Finding[], { account }: Telling): string[] {
  const open = found.filter(({ blocks }) => blocks).map(({ what, next = [] }) => [...what, ...next]);
  return [...open, ...outdated(review, standing)].map(account);
}

function outdated(review: Lot['review'], standing: Lot['standing']): Account[] {
  if (!review) return [];
  const { counts, takenBack, packedSince } = review;
  if (!counts) return takenBack && standing !== 'shipped' ? [[takenBack.what, sentence('next-review-again')]] : [];
  return packedSince > 0 ? [packedAfterIt(packedSince)] : [];
}
