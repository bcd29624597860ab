import { expect, test } from 'vitest';
import { allWords } from './all';

/** Words that stand in nearly every English sentence and in no Spanish one. */
const english =
  /(?<!\p{L})(the|this|that|these|and|with|from|was|were|are|what|which|who|yet|have|not|you|your|its|of|by|at|is)(?!\p{L})/iu;
/** What is quoted from a source, and names of figures. */
const asItStands = /“[^”]*”|\{\w+/g;

const messages = Object.entries(allWords).flatMap(([place, { es }]) =>
  Object.entries<string>(es).map(([code, text]) => [`${place} ${code}`, text] as const),
);

test('no message of Spanish is left in English', () => {
  expect(messages.filter(([, text]) => english.test(text.replace(asItStands, ' ')))).toEqual([]);
});

/** One word for each idea: what else it was called, and what it is called. */
const otherwise = [
  [/en anaquel/i, 'sin refrigeración'],
  [/horno cerrado/i, 'horno sellado'],
  [/balanza/i, 'báscula'],
  [/espesor/i, 'grosor'],
  [/Código de Alimentos/i, 'Food Code'],
  [/intervalo (de \{gap\} )?sin lecturas/i, 'hueco sin lecturas'],
  [/para examinar|es un filtro/i, 'una orientación'],
  [/sin límite fijado/i, 'sin cifra indicada'],
  [/Aparte el lote/i, 'Retenga el lote'],
  [/Se descuenta/i, 'Se tiene en cuenta'],
] as const;

test.each(otherwise)('no Spanish message says %s for %s', (word) => {
  expect(messages.filter(([, text]) => word.test(text))).toEqual([]);
});

test('Spanish opens what it closes, and asks with both marks', () => {
  const count = (text: string, mark: string) => text.split(mark).length;
  const pairs = ['¿?', '¡!', '“”', '()'] as const;
  expect(messages.filter(([, text]) => pairs.some(([opens = '', closes = '']) => count(text, opens) !== count(text, closes)))).toEqual([]);
  expect(messages.filter(([, text]) => /[«»"]/.test(text))).toEqual([]);
});
