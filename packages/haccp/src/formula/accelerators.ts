import type { Ratio } from './curing-species';
import { faultOf, type OrFault } from './fault';

/** Femtograms. */
export type Accelerators = { ascorbateOrErythorbate: bigint; citric: bigint };

/** Citric acid or sodium citrate in percent by weight of both: up to 50 % may be replaced (9 CFR 424.21(c)). */
export function replacedByCitric({ ascorbateOrErythorbate, citric }: Accelerators): OrFault<Ratio> {
  const all = ascorbateOrErythorbate + citric;
  if (ascorbateOrErythorbate < 0n || citric < 0n || all <= 0n) return faultOf('no-accelerator');
  return { numerator: citric * 100n, denominator: all };
}
