import { languages, say, type Language, type Say, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

/** What the pages say of one place, in the language of the tablet. */
export type Speaks = <Place extends keyof typeof allWords>(place: Place) => Say<WordsOf<Place>>;

export const speaking =
  (language: Language): Speaks =>
  (place) =>
    say(allWords[place][language], { language, timeZone: 'America/Chicago', timeStyle: 'US' }) as never;

/** For a browser: its locale, with each language that pages can be read in. */
export const locales = { en: 'en-US', es: 'es-US' } as const satisfies Record<keyof typeof languages, string>;

/** A text with figures or dates in it that the test leaves open: `{at}` and the like are given as `…`. */
export const around = (text: string): RegExp =>
  new RegExp(
    text
      .split('…')
      .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
      .join('.*'),
  );
