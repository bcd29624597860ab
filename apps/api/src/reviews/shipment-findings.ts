import type { Finding, Lot } from '@larderbook/contracts';
import { sentence } from '../platform/account';

/** Shipments recorded until the next review left under the one taken back. */
export const shipmentFindings = ({ reviews, shipments }: Lot): Finding[] =>
  reviews.flatMap(({ by: who, at, takenBack }, index): Finding[] => {
    const reason = takenBack?.reason;
    if (reason === undefined) return [];
    const next = reviews[index + 1]?.at;
    return shipments
      .filter(({ recordedAt }) => recordedAt >= at && (next === undefined || recordedAt <= next))
      .map(({ count, packingCode: code, number, customer }) => ({
        about: 'shipment',
        kind: 'flagged',
        what: [sentence('left-under-review', { count, code, number: String(number), customer, who, reason })],
        next: [sentence('consider-a-recall')],
        blocks: false,
      }));
  });
