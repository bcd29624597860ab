import type { Degrees, EnteredMass, Quantity } from '@larderbook/haccp';
import { decimalText } from '@larderbook/haccp';

export const weightFigure = ({ value, unit }: EnteredMass): Quantity => ({ value: String(value), unit });
export const degreesFigure = ({ hundredths, unit }: Degrees): Quantity => ({ value: decimalText(hundredths, 2), unit });

/** A percentage as a figure to be told. */
export const percentFigure = (percent: number): Quantity => ({ value: String(percent), unit: '%' });
