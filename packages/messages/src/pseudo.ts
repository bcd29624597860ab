import type { Words } from './say';

const ACCENTED: Record<string, string> = { a: 'áá', e: 'éé', i: 'íí', o: 'óó', u: 'úú', A: 'Áá', E: 'Éé', I: 'Íí', O: 'Óó', U: 'Úú' };

/**
 * A language nobody speaks, made from the English one: each message in brackets, its vowels accented and doubled, which
 * makes it about 40 % longer. What stands on a page without brackets was never translated; what is cut there will be
 * cut in German.
 */
export const pseudo = <W extends Words>(words: W): W =>
  Object.fromEntries(Object.entries(words).map(([code, text]) => [code, `⟦${lengthened(text)}⟧`])) as unknown as W;

/** Words stand outside every brace and within two, four …; within one, three … stands the name of a figure. */
function lengthened(text: string): string {
  let depth = 0;
  return [...text]
    .map((letter) => {
      depth += letter === '{' ? 1 : letter === '}' ? -1 : 0;
      return depth % 2 === 0 ? (ACCENTED[letter] ?? letter) : letter;
    })
    .join('');
}
