import type { Finding, Lot } from '@larderbook/contracts';

/** Shipments recorded until the next review left under the one taken back. */
export const shipmentFindings = ({ reviews, shipments }: Lot): Finding[] =>
  reviews.flatMap(({ by, at, takenBack }, index): Finding[] => {
    const reason = takenBack?.reason;
    if (reason === undefined) return [];
    const next = reviews[index + 1]?.at;
    return shipments
      .filter(({ recordedAt }) => recordedAt >= at && (next === undefined || recordedAt <= next))
      .map(({ count, packingCode, number, customer }) => ({
        about: 'shipment',
        kind: 'flagged',
        what: `${count} of ${packingCode} left with shipment ${number} to ${customer} under the review of ${by}, which was taken back: ${reason}`,
        next: 'Consider a recall of them.',
        blocks: false,
      }));
  });
