import type { Degrees, EnteredMass, Quantity } from '@larderbook/haccp';
import { decimalText } from '@larderbook/haccp';

/** A weight as it was entered, and a temperature as it was read, as figures to be told. */
export const weightFigure = ({ value, unit }: EnteredMass): Quantity => ({ value: String(value), unit });
export const degreesFigure = ({ hundredths, unit }: Degrees): Quantity => ({ value: decimalText(hundredths, 2), unit });
