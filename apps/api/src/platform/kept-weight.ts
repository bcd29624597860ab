import { gramsText, massFromGrams, massOf, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';

/** The three columns in which a weight is kept: as entered, and in exact grams. */
type WeightColumns = { weightValue: Prisma.Decimal; weightUnit: string; grams: Prisma.Decimal };

/** Exact femtograms of a column of grams; the only way from the database to arithmetic. */
export const femtograms = (grams: Prisma.Decimal): bigint => massFromGrams(grams.toFixed());

export const keepWeight = (entered: EnteredMass) => ({
  weightValue: entered.value,
  weightUnit: entered.unit,
  grams: gramsText(massOf(entered)),
});

/** The unit of a weight as the contract knows it; nothing else is ever written to the column. */
export const massUnit = (kept: string): MassUnit => kept as MassUnit;

export const keptWeightOf = ({ weightValue, weightUnit, grams }: WeightColumns) => ({
  value: weightValue.toNumber(),
  unit: massUnit(weightUnit),
  grams: grams.toNumber(),
});

/** Femtograms as grams for a reply, where the last digits no longer matter. */
export const gramsOf = (mass: bigint): number => Number(gramsText(mass));

/** Grams of a reply, to the microgram. */
export const massOfGrams = (grams: number): bigint => BigInt(Math.round(grams * 1e6)) * 1_000_000_000n;

/** "100 lb", as it was entered. */
export const formatEnteredWeight = ({ weightValue, weightUnit }: Pick<WeightColumns, 'weightValue' | 'weightUnit'>): string =>
  `${weightValue.toString()} ${weightUnit}`;
