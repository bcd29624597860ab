import type { Quantity } from '@larderbook/haccp';

/** A percentage as it was typed, to be written as the reader's language does. */
export const percentFigure = (percent: number): Quantity => ({ value: String(percent), unit: '%' });
