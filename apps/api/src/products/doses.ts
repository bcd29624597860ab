import type { PlanContent, planBatch, ReplyOf } from '@larderbook/contracts';
import {
  divide,
  doseFor,
  isOfKind,
  percentParts,
  scaleErrorOf,
  scaleStepOf,
  targetOnScale,
  type ConcentrationLimit,
  type InstrumentErrors,
  type RestrictedSubstance,
} from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import { gramsOf } from '../platform/kept-weight';
import type { FormulaInUse } from './formula-in-use';
import { publishedConcentration } from './published-concentration';

type Line = FormulaInUse['lines'][number] & { target: bigint };
type Curing = Line & { substance: RestrictedSubstance; fractionPercent: number };
type Dose = ReplyOf<typeof planBatch>['doses'][number];

const milligram = 1_000_000_000_000n; // in femtograms

/**
 * By the plan in force, else the published limit, less what other ingredients bring. Bounds are rounded inward to the
 * milligram.
 */
export function dosesOf(lines: readonly Line[], meat: bigint, plan: PlanContent | undefined, { sayLimit }: LimitTeller): Dose[] {
  const curing = lines.filter((line): line is Curing => line.substance !== undefined && line.fractionPercent !== undefined);
  return curing.map((line) => {
    const { limit, errors } = limitFor(line.substance, plan);
    const others = curing.filter((other) => other !== line && other.substance === line.substance);
    const brought = others.reduce((sum, other) => sum + equivalent(other, line), 0n);
    const within = { ingredient: scaleErrorOf(errors?.mass), meat: scaleErrorOf(errors?.meat) };
    const dose = doseFor(limit, meat, line.fractionPercent, within) ?? {};
    const [least, most] = [dose.least, dose.most].map((mass) => (mass === undefined ? undefined : atLeastNone(mass - brought)));
    const { target, because } = targetOnScale(line.target, { least, most }, scaleStepOf(errors));
    return {
      itemName: line.itemName,
      substance: line.substance,
      ppm: ppmOf(line),
      weighGrams: target === undefined ? undefined : gramsOf(target),
      onScale: because,
      minGrams: least === undefined ? undefined : inMilligrams(least, 'up'),
      maxGrams: most === undefined ? undefined : inMilligrams(most, 'down'),
      printed: sayLimit(limit),
    };
  });
}

type LimitWithin = { limit: ConcentrationLimit; errors?: InstrumentErrors };

function limitFor(substance: RestrictedSubstance, plan: PlanContent | undefined): LimitWithin {
  const [planned] = (plan?.controlPoints ?? []).flatMap(({ limits, errors }) =>
    limits.flatMap(({ limit }) => (isOfKind(limit, 'concentration') && limit.substance === substance ? [{ limit, errors }] : [])),
  );
  return planned ?? { limit: publishedConcentration[substance] };
}

/** Rounds up. */
const equivalent = (other: Curing, line: Curing): bigint =>
  divide(other.target * (percentParts(other.fractionPercent) ?? 0n), percentParts(line.fractionPercent) ?? 1n, 'up');

/** Both are whole ten-thousandths of a percent, so the product is exact: 0.25 % of a 6.25 % salt is 156.25 ppm. */
const ppmOf = ({ percent, fractionPercent }: Curing): number =>
  Number((percentParts(percent) ?? 0n) * (percentParts(fractionPercent) ?? 0n)) / 1_000_000;

const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

const inMilligrams = (mass: bigint, rounding: 'up' | 'down'): number =>
  mass <= 0n ? 0 : gramsOf(divide(mass, milligram, rounding) * milligram);
