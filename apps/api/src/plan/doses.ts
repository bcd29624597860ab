import type { PlanContent, planBatch, ReplyOf } from '@larderbook/contracts';
import {
  divide,
  doseFor,
  percentParts,
  sayLimit,
  type ConcentrationLimit,
  type RestrictedSubstance,
} from '@larderbook/haccp';
import { gramsOf } from '../platform/kept-weight';
import type { FormulaInUse } from './formula-in-use';
import { publishedConcentration } from './published-concentration';

type Line = FormulaInUse['lines'][number] & { target: bigint };
type Curing = Line & { substance: RestrictedSubstance; fractionPercent: number };
type Dose = ReplyOf<typeof planBatch>['doses'][number];

const milligram = 1_000_000_000_000n; // in femtograms

/**
 * Least and most of each curing ingredient for so much meat, by the plan in force or else the published limit.
 * What the other ingredients bring of the same substance is taken off; figures are rounded inward to the milligram.
 */
export function dosesOf(lines: readonly Line[], meat: bigint, plan: PlanContent | undefined): Dose[] {
  const curing = lines.filter(
    (line): line is Curing => line.substance !== undefined && line.fractionPercent !== undefined,
  );
  return curing.map((line) => {
    const limit = limitFor(line.substance, plan);
    const others = curing.filter((other) => other !== line && other.substance === line.substance);
    const brought = others.reduce((sum, other) => sum + equivalent(other, line), 0n);
    const { least, most } = doseFor(limit, meat, line.fractionPercent) ?? {};
    return {
      itemName: line.itemName,
      substance: line.substance,
      ppm: ppmOf(line),
      minGrams: least === undefined ? undefined : inMilligrams(least - brought, 'up'),
      maxGrams: most === undefined ? undefined : inMilligrams(most - brought, 'down'),
      printed: sayLimit(limit),
    };
  });
}

function limitFor(substance: RestrictedSubstance, plan: PlanContent | undefined): ConcentrationLimit {
  const planned = plan?.controlPoints
    .flatMap(({ limits }) => limits.map(({ limit }) => limit))
    .find((limit): limit is ConcentrationLimit => limit.kind === 'concentration' && limit.substance === substance);
  return planned ?? publishedConcentration[substance];
}

/** How much of `line` would bring as much of the substance as `other` does, rounded up. */
const equivalent = (other: Curing, line: Curing): bigint =>
  divide(other.target * (percentParts(other.fractionPercent) ?? 0n), percentParts(line.fractionPercent) ?? 1n, 'up');

/** Both are whole ten-thousandths of a percent, so the product is exact: 0.25 % of a 6.25 % salt is 156.25 ppm. */
const ppmOf = ({ percent, fractionPercent }: Curing): number =>
  Number((percentParts(percent) ?? 0n) * (percentParts(fractionPercent) ?? 0n)) / 1_000_000;

const inMilligrams = (mass: bigint, rounding: 'up' | 'down'): number =>
  mass <= 0n ? 0 : gramsOf(divide(mass, milligram, rounding) * milligram);
