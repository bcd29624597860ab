import type { Finding, Lot } from '@larderbook/contracts';
import { madeBy } from '../shop/person-names';
import type { LotRows } from './lot-rows';
import type { Shown } from './read-shown';
import type { LotStands } from './where-a-lot-stands';

/** Oldest first. */
export function showReviews({ reviews }: LotRows, { reviews: stands, packedSince }: LotStands, shown: Shown): Lot['reviews'] {
  return stands.flatMap(({ reviewId, takenBack }, index): Lot['reviews'] => {
    const review = reviews.find(({ id }) => id === reviewId);
    if (!review) return [];
    const { personId, name: by, at } = madeBy(review, shown.people);
    const { statement, soleWorker } = review;
    const findings = shown.reviews.find(({ id }) => id === reviewId)?.findings as unknown as Finding[] | undefined;
    return [
      {
        ...{ reviewId, personId, by, at, statement, soleWorker },
        counts: takenBack === undefined && index === stands.length - 1,
        packedSince: index === stands.length - 1 ? packedSince : 0,
        covered: coveredBy(findings ?? []),
        takenBack: takenBack && {
          what: takenBack.what,
          by: shown.people.get(takenBack.personId) ?? '',
          at: takenBack.at.toISOString(),
          reason: takenBack.reason,
        },
      },
    ];
  });
}

function coveredBy(findings: readonly Finding[]): Lot['reviews'][number]['covered'] {
  const count = (about: Finding['about'], kind: Finding['kind']) =>
    findings.filter((finding) => finding.about === about && finding.kind === kind).length;
  return { met: count('control-point', 'met'), settled: count('control-point', 'settled'), closed: count('deviation', 'settled') };
}
