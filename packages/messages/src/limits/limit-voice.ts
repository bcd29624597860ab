import type { Quantity } from '@larderbook/haccp';
import { writeNumber } from '../figures/write-number';
import { writeQuantity } from '../figures/write-quantity';
import { codeOf } from '../code-of';
import { say, type Say } from '../say';
import { localeOf, type Voice } from '../voice';
import type { WordsOf } from '../words';

export type SayLimits = Say<WordsOf<'limits'>>;

export type LimitWords = Readonly<Record<keyof WordsOf<'limits'>, string>>;

export type LimitVoice = {
  say: SayLimits;
  locale: string;
  number: (decimal: string) => string;
  quantity: (figure: Quantity) => string;
  /** Translates a known name, or what a published row says, and leaves anything else as it is. */
  name: (name: string) => string;
};

export function limitVoice(words: LimitWords, voice: Voice): LimitVoice {
  const locale = localeOf(voice);
  const plain: Readonly<Record<string, string>> = words;
  return {
    say: say(words as WordsOf<'limits'>, voice),
    locale,
    number: (decimal) => writeNumber(decimal, locale),
    quantity: (figure) => writeQuantity(figure, locale),
    name: (name) => plain[codeOf('name', name)] ?? plain[name] ?? name,
  };
}
