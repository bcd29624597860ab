import type { Words } from './say';

const ACCENTED: Record<string, string> = { a: 'áá', e: 'éé', i: 'íí', o: 'óó', u: 'úú', A: 'Áá', E: 'Éé', I: 'Íí', O: 'Óó', U: 'Úú' };

/**
 * A test language made from English: each message in brackets, its vowels accented and doubled, about 40 % longer. Text
 * without brackets was never translated; text cut here will be cut in German.
 */
export const pseudo = <W extends Words>(words: W): W =>
  Object.fromEntries(Object.entries(words).map(([code, text]) => [code, inPseudo(text)])) as unknown as W;

export const inPseudo = (text: string): string => `‹${lengthened(text)}›`;

/** Words stand at an even depth of braces, names of figures at an odd one. */
function lengthened(text: string): string {
  let depth = 0;
  return [...text]
    .map((letter) => {
      depth += letter === '{' ? 1 : letter === '}' ? -1 : 0;
      return depth % 2 === 0 ? (ACCENTED[letter] ?? letter) : letter;
    })
    .join('');
}
