import { looseIn, looseToRework, type LotWeights } from '../lots/lot-weights.queries';

const wholeYield = 1_000_000n;

/**
 * The most that can still be packed of a lot, in femtograms; below zero when its records contradict each other. Loose
 * product that is to be reworked is not packed. A formula that takes up water not weighed in (a yield above 100 %)
 * makes more than went in.
 * @param expectedYield of the formula, in ten-thousandths of a percent
 */
export function roomToPack(weights: LotWeights, expectedYield: bigint): bigint {
  const made = expectedYield > wholeYield ? (weights.wentIn * expectedYield) / wholeYield : weights.wentIn;
  return looseIn({ ...weights, wentIn: made }) - looseToRework(weights);
}
