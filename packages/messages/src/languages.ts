import type { languageTags } from '@larderbook/contracts';

export type Language = (typeof languageTags)[number];

/** The others are translated from the first. */
export const languages = { en: 'English', es: 'Español' } as const satisfies Record<Language, string>;

export const isLanguage = (tag: string): tag is Language => Object.hasOwn(languages, tag);

/** Wishes come in order of preference: "es-MX, en;q=0.8". */
export function languageFor(wishes: readonly string[]): Language {
  for (const wish of wishes) {
    const [tag = ''] = wish.trim().toLowerCase().split(/[-_;]/);
    if (isLanguage(tag)) return tag;
  }
  return 'en';
}
