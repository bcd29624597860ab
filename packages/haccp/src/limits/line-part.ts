import type { TemperatureUnit } from '../quantity/temperature';
import type { CriticalLimit } from './limit';
import type { Coded, PlainFigure } from './verdict';

export type Sum = { sum: Term[] };
export type Term = PlainFigure | Coded | ByVerdict;

/** `unit` of its readings. */
export type AsPrinted = { limit: CriticalLimit; unit?: TemperatureUnit };

export type ByVerdict = { verdict: 'measured' | 'limit' | 'because' | 'margin and because' | 'kind and margin' };

/** One part of a line of working: whoever shows it puts it into words. */
export type LinePart = PlainFigure | Coded | Sum | AsPrinted | ByVerdict;

/** ``sum`${meat} × ${percent}` ``: signs are text, terms stay data; a list is inserted whole. */
export function sum(signs: TemplateStringsArray, ...terms: (Term | readonly Term[])[]): Sum {
  const all = signs.flatMap((sign, index): Term[] => [sign, ...[terms[index] ?? []].flat()]);
  return { sum: all.filter((term) => term !== '') };
}

export const allOf = (sentences: readonly Coded[]): Sum => ({ sum: joined(sentences, ' ') });

export const joined = (terms: readonly Term[], sign: string): Term[] =>
  terms.flatMap((term, index) => (index === 0 ? [term] : [sign, term]));
