import type { Coded, Figure, Figures } from '@larderbook/haccp';
import { writeNumber } from '../figures/write-number';
import { writeSpan } from '../figures/write-span';
import { say, write, type Words } from '../say';
import type { Value } from '../value';
import { localeOf, type Voice } from '../voice';

/** Undefined where there are no words for the code. */
export type Spoken = (code: string, figures?: Figures) => string | undefined;

/**
 * `next+left` is the text of `next` that needs the figure `left`; the text that needs most of the figures given is
 * said. @param today times of this day need no day beside them
 */
export function spoken(words: Words, voice: Voice, today?: number): Spoken {
  const speak = say(words, voice) as (code: string, values: Record<string, Value | number>) => string;
  const texts = textsByCode(words);
  const locale = localeOf(voice);
  const spell = (figure: Figure): Value | number => {
    if (Array.isArray(figure)) return figure.map((each) => inWords(spell(each)));
    if (typeof figure !== 'object' || 'unit' in figure) return figure;
    if ('at' in figure) return { ...figure, today };
    return 'code' in figure ? (told(figure.code, figure.figures) ?? figure.code) : writeSpan(figure, locale);
  };
  const inWords = (value: Value): string => (typeof value === 'number' ? writeNumber(String(value), locale) : write(value, voice));
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

export const spokenAll = (told: Spoken, sentences: readonly Coded[]): string => sentences.map((each) => codedText(told, each)).join(' ');

export const codedText = (told: Spoken, { code, figures }: Coded): string => told(code, figures) ?? code;
