import { divide } from '../quantity/divide';
import { asGiven } from '../quantity/quantities';
import { faultOf, type OrFault } from './fault';
import { faultsOf, percentParts, type FormulaLine } from './formula';
import { scaleFormula, type Target } from './scale-formula';

/** Femtograms. `yieldPercent` is packed weight on what `yieldOn` names. */
export type Wanted =
  | { trimmedMeat: bigint }
  | { packages: number; netWeight: bigint; yieldPercent: number; yieldOn: 'meat block' | 'everything' };

/** Femtograms. */
export type Batch<Line extends FormulaLine> = { meat: bigint; lines: Target<Line>[]; all: bigint };

const WHOLE = 1_000_000n; // 100 % in ten-thousandths of a percent

/** By trimmed meat, or back from packages through the yield: never less meat than they take. */
export function batchOf<Line extends FormulaLine>(lines: readonly Line[], wanted: Wanted): OrFault<Batch<Line>> {
  const [wrong] = faultsOf(lines);
  if (wrong) return { fault: wrong.because };
  const meat = 'trimmedMeat' in wanted ? wanted.trimmedMeat : meatFor(lines, wanted);
  if (typeof meat !== 'bigint') return meat;
  if (meat <= 0n) return faultOf('meat-weighs-nothing');
  const scaled = scaleFormula(lines, meat);
  return { meat, lines: scaled, all: scaled.reduce((sum, { target }) => sum + target, meat) };
}

function meatFor(lines: readonly FormulaLine[], wanted: Exclude<Wanted, { trimmedMeat: bigint }>) {
  const { packages, netWeight, yieldPercent, yieldOn } = wanted;
  const yieldParts = percentParts(yieldPercent);
  if (yieldParts === undefined) return faultOf('yield-unusable', { yield: asGiven(yieldPercent, '%') });
  if (!Number.isSafeInteger(packages) || packages <= 0) return faultOf('packages-unusable', { packages: asGiven(packages, 'ratio') });
  if (netWeight <= 0n) return faultOf('package-weighs-nothing');
  const others = lines.reduce((sum, { percent }) => sum + (percentParts(percent) as bigint), 0n); // faultsOf checked them
  const perMeat = yieldOn === 'meat block' ? WHOLE : WHOLE + others;
  return divide(BigInt(packages) * netWeight * WHOLE * WHOLE, yieldParts * perMeat, 'up');
}
