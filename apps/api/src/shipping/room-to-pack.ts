import { looseIn, looseToRework, type LotHolds } from '../lots/lot-holds.queries';

const wholeYield = 1_000_000n;

/**
 * The most that can still be packed of a lot, in femtograms; below zero when its records contradict each other. Loose
 * product that is to be reworked is not packed. A formula that takes up water not weighed in (a yield above 100 %)
 * makes more than went in.
 * @param expectedYield of the formula, in ten-thousandths of a percent
 */
export function roomToPack(held: LotHolds, expectedYield: bigint): bigint {
  const made = expectedYield > wholeYield ? (held.wentIn * expectedYield) / wholeYield : held.wentIn;
  return looseIn({ ...held, wentIn: made }) - looseToRework(held);
}
