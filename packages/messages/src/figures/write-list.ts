/** Several names in one: "a, b, and c", "a, b y c". */
export const writeList = (words: readonly string[], locale: string): string =>
  new Intl.ListFormat(locale, { type: 'conjunction' }).format(words);
