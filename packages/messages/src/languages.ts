import type { languageTags } from '@larderbook/contracts';

export type Language = (typeof languageTags)[number];

/** The languages Larderbook speaks, each with its own name. The first is what the others are translated from. */
export const languages = { en: 'English', es: 'Español' } as const satisfies Record<Language, string>;

export const isLanguage = (tag: string): tag is Language => Object.hasOwn(languages, tag);

/** The best of our languages for a browser's or a request's wishes, in their order: "es-MX, en;q=0.8". */
export function languageFor(wishes: readonly string[]): Language {
  for (const wish of wishes) {
    const [tag = ''] = wish.trim().toLowerCase().split(/[-_;]/);
    if (isLanguage(tag)) return tag;
  }
  return 'en';
}
