import type { PlanContent, substances } from '@larderbook/contracts';
import {
  erythorbateComminuted,
  isOfKind,
  judgeConcentration,
  nitrateComminuted,
  nitriteComminuted,
  percentParts,
  phosphate,
  type ConcentrationLimit,
  type Portion,
  type Verdict,
} from '@larderbook/haccp';

export type Substance = (typeof substances)[number];
/** A line of a formula as far as restricted substances go; `percent` is of the meat block. */
export type Carrier = { itemName: string; percent: number; substance?: Substance; fractionPercent?: number };

/** What one line brings, and how everything that brings the same substance is judged together. */
export type Restricted = {
  substance: Substance;
  /** The line by itself. */
  alone: Verdict;
  limit: ConcentrationLimit;
  verdict: Verdict;
  isAlone: boolean;
};

/** Chopped meat is what most formulas are for, and its maxima are the lowest. */
const published: Record<Substance, ConcentrationLimit> = {
  'sodium nitrite': nitriteComminuted,
  'sodium nitrate': nitrateComminuted,
  'sodium erythorbate': erythorbateComminuted,
  phosphate,
};

/** 100 % in ten-thousandths of a percent: a formula is judged on so much meat, each line in the same parts. */
const meatBlock = 1_000_000n;

type LimitFor = { limit: ConcentrationLimit; isPlanned: boolean };

/** The limit of the plan for a substance, or else the published one for chopped meat. */
export function limitFor(substance: Substance, plan: PlanContent | undefined): LimitFor {
  const planned = plan?.controlPoints
    .flatMap(({ limits }) => limits.map(({ limit }) => limit))
    .find((limit): limit is ConcentrationLimit => isOfKind(limit, 'concentration') && limit.substance === substance);
  return { limit: planned ?? published[substance], isPlanned: planned !== undefined };
}

/** The ppm that the percentage of one line gives, judged together with the other lines that hold the same substance. */
export function restrictedIn(line: Carrier, lines: readonly Carrier[], plan: PlanContent | undefined): Restricted | undefined {
  const { substance } = line;
  if (!substance) return undefined;
  const { limit } = limitFor(substance, plan);
  const carriers = lines.filter((other) => other.substance === substance);
  return {
    substance,
    limit,
    alone: judgeConcentration([portionOf(line)], meatBlock, limit),
    verdict: judgeConcentration(carriers.map(portionOf), meatBlock, limit),
    isAlone: carriers.length === 1,
  };
}

/** A percentage that cannot be used has a negative mass, which no judge takes for a weight. */
const portionOf = ({ itemName, percent, fractionPercent }: Carrier): Portion => ({
  name: itemName,
  mass: percentParts(percent) ?? -1n,
  percent: fractionPercent ?? NaN,
});
