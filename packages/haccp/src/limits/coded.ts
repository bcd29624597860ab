import type { Quantity } from '../quantity/quantity';
import type { Coded, Figures, Phrase } from './verdict';

/** Words by their code, with the figures that stand in them. */
export const coded = (code: string, figures?: Figures): Coded => (figures ? { code, figures } : { code });

/** Words by one code of a closed list, with the figures that stand in them. */
export type CodedAs<Code extends string> = { code: Code; figures?: Readonly<Record<string, Quantity | string | number>> };

/** The words for one value of a closed set: `wordFor('species', 'mixed or unknown')` is "species-mixed-or-unknown". */
export const wordFor = (of: string, value: string): Phrase => ({ code: `${of}-${value.replace(/,? /g, '-').toLowerCase()}` });
