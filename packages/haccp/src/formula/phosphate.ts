import { partsPerMillion } from '../quantity/percent';
import type { Ratio } from './curing-species';
import { asGiven } from '../quantity/quantities';
import { faultOf, type OrFault } from './fault';

export type PumpedPhosphate = { ofGreen: Ratio; ofPumped: Ratio };

const MILLION = 1_000_000n;

/**
 * In percent, of the green weight: pickle % × pump %; of the pumped weight: the same over 100 % + pump. The rule prints
 * 5 % in the pickle at 10 % pump and 0.5 % of the product (9 CFR 424.21(c)).
 */
export function pumpedPhosphate(picklePercent: number, pumpPercent: number): OrFault<PumpedPhosphate> {
  const [pickle, pump] = [partsPerMillion(picklePercent), partsPerMillion(pumpPercent)];
  if (!pickle || !pump) return faultOf('phosphate-unusable', { pickle: asGiven(picklePercent, '%'), pump: asGiven(pumpPercent, '%') });
  const numerator = BigInt(pickle) * BigInt(pump) * 100n;
  return {
    ofGreen: { numerator, denominator: MILLION * MILLION },
    ofPumped: { numerator, denominator: MILLION * (MILLION + BigInt(pump)) },
  };
}
