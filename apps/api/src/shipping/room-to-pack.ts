import { looseIn, looseToRework, type LotWeights } from '../lots/lot-weights.queries';

const wholeYield = 1_000_000n;

/**
 * Femtograms; below zero when records contradict each other. A yield above 100 % takes up water not weighed in, so more
 * comes out than went in.
 * @param expectedYield in ten-thousandths of a percent
 */
export function roomToPack(weights: LotWeights, expectedYield: bigint): bigint {
  const made = expectedYield > wholeYield ? (weights.wentIn * expectedYield) / wholeYield : weights.wentIn;
  return looseIn({ ...weights, wentIn: made }) - looseToRework(weights);
}
