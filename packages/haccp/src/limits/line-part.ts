import type { TemperatureUnit } from '../quantity/temperature';
import type { CriticalLimit } from './limit';
import type { Coded, PlainFigure } from './verdict';

/** Figures put into a rule: signs as they stand, and between them figures and words. */
export type Sum = { sum: Term[] };
export type Term = PlainFigure | Coded | ByVerdict;

/** A limit as its source prints it, in the unit that its readings were read in. */
export type AsPrinted = { limit: CriticalLimit; unit?: TemperatureUnit };

/** What the verdict beside it says. */
export type ByVerdict = { verdict: 'measured' | 'limit' | 'because' | 'margin and because' | 'kind and margin' };

/**
 * What stands in a line of a working: a figure, what a person named, words by their code, figures put into a rule, a
 * limit, or what the verdict beside it says. Whoever shows it puts it into words.
 */
export type LinePart = PlainFigure | Coded | Sum | AsPrinted | ByVerdict;

/** ``sum`${meat} × ${percent}` ``: the signs are text, what stands between them stays data; a list is put in whole. */
export function sum(signs: TemplateStringsArray, ...terms: (Term | readonly Term[])[]): Sum {
  const all = signs.flatMap((sign, index): Term[] => [sign, ...[terms[index] ?? []].flat()]);
  return { sum: all.filter((term) => term !== '') };
}

/** Sentences one after the other. */
export const allOf = (sentences: readonly Coded[]): Sum => ({ sum: joined(sentences, ' ') });

/** Several terms with a sign between every two. */
export const joined = (terms: readonly Term[], sign: string): Term[] =>
  terms.flatMap((term, index) => (index === 0 ? [term] : [sign, term]));
