/** Several names in one: "a, b, and c", "a, b y c"; or one of them: "a, b, or c". */
export const writeList = (words: readonly string[], locale: string, type: 'conjunction' | 'disjunction' = 'conjunction'): string =>
  new Intl.ListFormat(locale, { type }).format(words);
