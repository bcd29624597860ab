/** "a, b, and c", "a, b y c"; or "a, b, or c". */
export const writeList = (words: readonly string[], locale: string, type: 'conjunction' | 'disjunction' = 'conjunction'): string =>
  new Intl.ListFormat(locale, { type }).format(words);
