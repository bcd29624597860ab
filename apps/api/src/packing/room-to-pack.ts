import type { LotHolds } from '../lots/lot-holds.queries';

const wholeYield = 1_000_000n;

/**
 * The most that can still be packed of a lot, in femtograms; below zero when its records contradict each other.
 * A formula that takes up water not weighed in (a yield above 100 %) makes more than went in.
 * @param expectedYield of the formula, in ten-thousandths of a percent
 */
export function roomToPack({ wentIn, removed, condemned, reworked, packed }: LotHolds, expectedYield: bigint): bigint {
  const made = expectedYield > wholeYield ? (wentIn * expectedYield) / wholeYield : wentIn;
  return made - removed - condemned - reworked - packed;
}
