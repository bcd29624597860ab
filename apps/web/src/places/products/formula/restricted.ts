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
/** `percent` is of the meat block. */
export type Carrier = { itemName: string; percent: number; substance?: Substance; fractionPercent?: number };

export type Restricted = {
  substance: Substance;
  /** Of this line only; `verdict` is of all lines with the substance. */
  alone: Verdict;
  limit: ConcentrationLimit;
  verdict: Verdict;
  isAlone: boolean;
};

/** Most formulas are for chopped meat, and its maxima are the lowest. */
const published: Record<Substance, ConcentrationLimit> = {
  'sodium nitrite': nitriteComminuted,
  'sodium nitrate': nitrateComminuted,
  'sodium erythorbate': erythorbateComminuted,
  phosphate,
};

/** 100 % in ten-thousandths of a percent, the unit of each line's mass. */
const meatBlock = 1_000_000n;

type LimitFor = { limit: ConcentrationLimit; isPlanned: boolean };

/** The plan's limit, or else the published one for chopped meat. */
export function limitFor(substance: Substance, plan: PlanContent | undefined): LimitFor {
  const planned = plan?.controlPoints
    .flatMap(({ limits }) => limits.map(({ limit }) => limit))
    .find((limit): limit is ConcentrationLimit => isOfKind(limit, 'concentration') && limit.substance === substance);
  return { limit: planned ?? published[substance], isPlanned: planned !== undefined };
}

/** Lines with the same substance are judged together. */
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

/** A percentage that cannot be used becomes a negative mass, which no judge takes for a weight. */
const portionOf = ({ itemName, percent, fractionPercent }: Carrier): Portion => ({
  name: itemName,
  mass: percentParts(percent) ?? -1n,
  percent: fractionPercent ?? NaN,
});
