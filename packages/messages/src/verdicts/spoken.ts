import type { Coded, Figure, Figures } from '@larderbook/haccp';
import { writeSpan } from '../figures/write-span';
import { say, type Words } from '../say';
import type { Value } from '../value';
import { localeOf, type Voice } from '../voice';

/** Says a code with its figures; undefined where there are no words for it. */
export type Spoken = (code: string, figures?: Figures) => string | undefined;

/**
 * Codes with figures in the words of one voice. Of several texts of a code, `next+left` is said where the figure `left`
 * is there; the one that asks for most of what is there comes first.
 * @param today a moment of the day whose times need no day beside them
 */
export function spoken(words: Words, voice: Voice, today?: number): Spoken {
  const speak = say(words, voice) as (code: string, values: Record<string, Value | number>) => string;
  const texts = textsByCode(words);
  const locale = localeOf(voice);
  const spell = (figure: Figure): Value | number => {
    if (typeof figure !== 'object' || 'unit' in figure) return figure;
    if ('at' in figure) return { ...figure, today };
    return 'code' in figure ? (told(figure.code, figure.figures) ?? figure.code) : writeSpan(figure, locale);
  };
  const told: Spoken = (code, figures = {}) => {
    const text = texts.get(code)?.find(({ asks }) => asks.every((name) => name in figures));
    if (!text) return undefined;
    return speak(text.key, Object.fromEntries(Object.entries(figures).map(([name, figure]) => [name, spell(figure)])));
  };
  return told;
}

type Text = { key: string; asks: string[] };

const known = new WeakMap<Words, ReadonlyMap<string, Text[]>>();

function textsByCode(words: Words): ReadonlyMap<string, Text[]> {
  const texts = known.get(words) ?? sortedOut(words);
  known.set(words, texts);
  return texts;
}

function sortedOut(words: Words): ReadonlyMap<string, Text[]> {
  const texts = new Map<string, Text[]>();
  for (const key of Object.keys(words)) {
    const [code = '', ...asks] = key.split('+');
    texts.set(code, [...(texts.get(code) ?? []), { key, asks }]);
  }
  for (const of of texts.values()) of.sort((a, b) => b.asks.length - a.asks.length);
  return texts;
}

/** Sentences one after the other. */
export const spokenAll = (told: Spoken, sentences: readonly Coded[]): string => sentences.map((each) => codedText(told, each)).join(' ');

export const codedText = (told: Spoken, { code, figures }: Coded): string => told(code, figures) ?? code;
