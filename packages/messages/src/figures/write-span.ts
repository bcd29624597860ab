import type { Span } from '@larderbook/haccp';
import { writeNumber } from './write-number';
import { writeQuantity } from './write-quantity';

/** "130 → 80 °F" */
export const writeSpan = ({ from, to }: Span, locale: string): string =>
  `${writeNumber(from.value, locale)} → ${writeQuantity(to, locale)}`;
