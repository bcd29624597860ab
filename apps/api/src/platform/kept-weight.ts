import { gramsText, massFromGrams, massOf, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';

type WeightColumns = { weightValue: Prisma.Decimal; weightUnit: string; grams: Prisma.Decimal };

/** Arithmetic uses these exact femtograms, never the column of grams. */
export const femtograms = (grams: Prisma.Decimal): bigint => massFromGrams(grams.toFixed());

export const keepWeight = (entered: EnteredMass) => ({
  weightValue: entered.value,
  weightUnit: entered.unit,
  grams: gramsText(massOf(entered)),
});

/** Only units of the contract are ever written to the column. */
export const massUnit = (kept: string): MassUnit => kept as MassUnit;

export const keptWeightOf = ({ weightValue, weightUnit, grams }: WeightColumns) => ({
  value: weightValue.toNumber(),
  unit: massUnit(weightUnit),
  grams: grams.toNumber(),
});

/** For replies only: the last digits are lost. */
export const gramsOf = (mass: bigint): number => Number(gramsText(mass));

/** Rounds to the microgram. */
export const massOfGrams = (grams: number): bigint => BigInt(Math.round(grams * 1e6)) * 1_000_000_000n;
