import type { Quantity } from '../quantity/quantity';
import type { Coded, Figures, PlainPhrase } from './verdict';

export const coded = (code: string, figures?: Figures): Coded => (figures ? { code, figures } : { code });

export type CodedAs<Code extends string> = { code: Code; figures?: Readonly<Record<string, Quantity | string | number>> };

/** `wordFor('species', 'mixed or unknown')` is "species-mixed-or-unknown". */
export const wordFor = (of: string, value: string): PlainPhrase => ({ code: `${of}-${value.replace(/,? /g, '-').toLowerCase()}` });
