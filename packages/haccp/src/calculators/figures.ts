import { scaled, decimalText } from '../quantity/decimal';
import type { Rounding } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import type { Quantity } from '../quantity/quantity';
import { roundedMass } from '../quantity/weigh';

export const typed = ({ value, unit }: EnteredMass): Quantity => ({ value: String(value), unit });

export const grams = (femtograms: bigint, decimals = 3, rounding: Rounding = 'nearest'): Quantity =>
  roundedMass(femtograms, 'g', decimals, rounding);

export function percent(value: number): Quantity {
  const parts = scaled(value, 4);
  return { value: parts === undefined ? String(value) : decimalText(parts, 4), unit: '%' };
}

export const plainly = (value: number | string): Quantity => ({ value: String(value), unit: 'ratio' });
