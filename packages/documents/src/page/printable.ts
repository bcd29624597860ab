// oxlint-disable-next-line no-misleading-character-class -- each of them is taken out by itself
const joinersAndSelectors = /[\u200b-\u200f\u2060\ufe00-\ufe0f]/g;
// oxlint-disable-next-line no-control-regex -- they are what is taken out
const controls = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029]/g;

/** A character without a glyph would vanish and leave a false record: "[U+4E2D]" is printed. */
export function printable(text: string, hasGlyph: (codePoint: number) => boolean): string {
  const clean = text.normalize('NFC').replace(/\r\n?/g, '\n').replace(controls, ' ').replace(joinersAndSelectors, '');
  if (/^[\n -~]*$/.test(clean)) return clean;
  return Array.from(clean, (sign) => spelled(sign, hasGlyph)).join('');
}

function spelled(sign: string, hasGlyph: (codePoint: number) => boolean): string {
  const codePoint = sign.codePointAt(0) ?? 0;
  if (sign === '\n' || hasGlyph(codePoint)) return sign;
  return `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
}
