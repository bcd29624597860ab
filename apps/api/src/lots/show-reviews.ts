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
        covered: sayCovered(findings ?? []),
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

/** "6 control points met, 1 settled, 1 deviation closed" */
function sayCovered(findings: readonly Finding[]): string {
  const count = (about: Finding['about'], kind: Finding['kind']) =>
    findings.filter((finding) => finding.about === about && finding.kind === kind).length;
  const [met, settled, deviations] = [count('control-point', 'met'), count('control-point', 'settled'), count('deviation', 'settled')];
  return [
    `${met} ${met === 1 ? 'control point' : 'control points'} met`,
    ...(settled > 0 ? [`${settled} settled`] : []),
    ...(deviations > 0 ? [`${deviations} ${deviations === 1 ? 'deviation' : 'deviations'} closed`] : []),
  ].join(', ');
}
