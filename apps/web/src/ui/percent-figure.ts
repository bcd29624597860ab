import type { Quantity } from '@larderbook/haccp';

export const percentFigure = (percent: number): Quantity => ({ value: String(percent), unit: '%' });
