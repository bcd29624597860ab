/** What a key of the keypad does to the text on its display. */
export type Key = '0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '.' | '-' | 'back' | 'clear';

/** `decimals` after the point. */
export type Writing = { decimals: number; belowZero: boolean };

const mostDigits = 7;

/** A key that would make something unwritable changes nothing. */
export function press(text: string, key: Key, writing: Writing): string {
  if (key === 'clear') return '';
  if (key === 'back') return text.slice(0, -1);
  if (key === '-') return text.startsWith('-') ? text.slice(1) : tidy(`-${text}`, text, writing);
  return tidy(text + key, text, writing);
}

/** `next` if it can begin a number as `writing` allows, else `before`. Takes a decimal comma as a point. */
export function tidy(next: string, before: string, { decimals, belowZero }: Writing): string {
  const plain = next.replace(',', '.').replace('−', '-').trim();
  const allowed = /^(-?)(\d*)(\.?)(\d*)$/.exec(plain);
  if (!allowed) return before;
  const [, minus = '', whole = '', point = '', part = ''] = allowed;
  if ((minus && !belowZero) || (point && decimals === 0)) return before;
  if (part.length > decimals || whole.length + part.length > mostDigits) return before;
  return `${minus}${whole === '' && point ? '0' : whole.replace(/^0+(?=\d)/, '')}${point}${part}`;
}

/** Undefined while it is no number yet ("", "-", "."). */
export function numberOf(text: string): number | undefined {
  return /\d/.test(text) ? Number(text) : undefined;
}
