import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { Lettering } from './lettering';
import { printable } from './printable';
import { styles } from './theme';
import { faceNames, Typefaces } from './typefaces';

const typefaces = () => new Typefaces(new PDFDocument({ autoFirstPage: false, font: '' }));
const source = fileURLToPath(new URL('..', import.meta.url));

/** Every character that stands in the words of this package, and those of the trade that its records may bring. */
function toBePrinted(): string[] {
  const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts') && !/test/.test(name));
  const ours = files.map((name) => readFileSync(`${source}/${name}`, 'utf8')).join('');
  const brought =
    '≥≤<>=±×−–—°→·′″¼½¾⅓%µ…“”‘’«»ÄÖÜäöüßÀÉÈÊÇàéèêçñÑåÅøØæÆłŁőŐčČšŠžŽđĐþÞŒœŻż' +
    'АБВГДЕЖЗабвгдежзαβγδΩ0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
  return [...new Set(ours + brought)].filter((sign) => sign > ' ');
}

test.each(faceNames)('%s has a glyph for every character to be printed', (name) => {
  const faces = typefaces();
  expect(toBePrinted().filter((sign) => !faces.hasGlyph(name, sign.codePointAt(0) ?? 0))).toEqual([]);
});

test('figures are of one width, so that columns of numbers align', () => {
  const faces = typefaces();
  for (const style of [styles.body, styles.strong, styles.small]) {
    const widths = new Set([...'0123456789'].map((figure) => faces.get(style.face).widthOfString(figure, style.size)));
    expect(widths.size).toBe(1);
  }
});

test('a line is as wide as pdfkit says, but for the kerning of figures', () => {
  const document = new PDFDocument({ autoFirstPage: false, font: '' });
  const faces = new Typefaces(document);
  const lettering = new Lettering(document, faces);
  const text = 'Whole lot held in the cooler, Tower AV';
  expect(lettering.width(text, styles.body)).toBeCloseTo(faces.get('text').widthOfString(text, 9), 5);
});

test.each([
  ['plain words are left alone', 'core 151.5', 'core 151.5'],
  ['a missing character is spelled out', 'a 肉 b', 'a [U+8089] b'],
  ['letters in two parts become one', 'e\u0301', 'é'],
  ['controls become blanks, and marks that cannot be seen go', 'a\tb\u200bc\u0000', 'a bc '],
  ['lines of any system are lines', 'a\r\nb', 'a\nb'],
  ['half a character is spelled out', 'a\ud83e', 'a[U+D83E]'],
])('%s', (_case, text, shown) => {
  const faces = typefaces();
  expect(printable(text, (codePoint) => faces.hasGlyph('text', codePoint))).toBe(shown);
});
