import { expect, test } from 'vitest';
import { addLine, changeLine, draftFrom, linesOf, meatSum, moveLine, removeLine, type FormulaDraft } from './formula-draft';
import { inEnglish } from '../../../ui/in-english.test-data';
import { formulaFaults, isFaultless } from './formula-faults';

const line = (lineId: string, part: 'meat' | 'ingredient', percent: string, itemId = lineId) => ({ lineId, part, itemId, percent });
const sausage: FormulaDraft = {
  formulaId: '01990000-0000-7000-8000-000000000001',
  basedOn: 3,
  expectedYield: '88',
  lines: [
    line('shoulder', 'meat', '70'),
    line('belly', 'meat', '30'),
    line('salt', 'ingredient', '1.6'),
    line('cure', 'ingredient', '0.25'),
  ],
};
const say = inEnglish('formulas');
const names = new Map(sausage.lines.map(({ itemId }) => [itemId, itemId]));
const order = ({ lines }: FormulaDraft) => lines.map(({ lineId }) => lineId);

test('a first formula begins with one meat that is the whole meat block', () => {
  expect(draftFrom(undefined)).toMatchObject({ lines: [{ part: 'meat', itemId: '', percent: '100' }] });
});

test('a meat added last still stands among the meats', () => {
  expect(addLine(sausage, 'meat').lines.map(({ part }) => part)).toEqual(['meat', 'meat', 'meat', 'ingredient', 'ingredient']);
});

test.each([
  ['up among its own', 'belly', -1, ['belly', 'shoulder', 'salt', 'cure']],
  ['down among its own', 'salt', 1, ['shoulder', 'belly', 'cure', 'salt']],
  ['never out of the meats', 'belly', 1, ['shoulder', 'belly', 'salt', 'cure']],
  ['never above the first', 'shoulder', -1, ['shoulder', 'belly', 'salt', 'cure']],
] as const)('a line moves %s', (_case, lineId, by, expected) => {
  expect(order(moveLine(sausage, lineId, by))).toEqual(expected);
});

test('every change takes a new id, so that other words are another version', () => {
  expect(removeLine(sausage, 'cure').formulaId).not.toBe(sausage.formulaId);
  expect(changeLine(sausage, 'cure', { percent: '0.2' }).formulaId).not.toBe(sausage.formulaId);
});

test('the meats are added up exactly: 33.3 + 33.3 + 33.4 is the whole', () => {
  const thirds = { ...sausage, lines: ['33.3', '33.3', '33.4'].map((percent, i) => line(String(i), 'meat', percent)) };
  expect(meatSum(thirds)).toEqual({ percent: { value: '100', unit: '%' }, isWhole: true });
});

test('a formula that adds up has no fault', () => {
  expect(isFaultless(formulaFaults(sausage, names, say))).toBe(true);
  expect(linesOf(sausage)[3]).toEqual({ part: 'ingredient', itemId: 'cure', percent: 0.25 });
});

test('each fault stands beside what it is about', () => {
  const faulty = changeLine(
    changeLine(changeLine({ ...sausage, expectedYield: '' }, 'belly', { percent: '29' }), 'salt', { itemId: '' }),
    'cure',
    { percent: '' },
  );
  expect(formulaFaults(faulty, names, say)).toEqual({
    lines: { salt: 'Choose what goes in here.', cure: 'cure has no percentage.' },
    meats: 'The meats add up to 99 %; together they make 100 %.',
    expectedYield: 'Give the yield you expect.',
  });
});

test('an item may stand in a formula once', () => {
  expect(formulaFaults(changeLine(sausage, 'cure', { itemId: 'salt' }), names, say).lines).toEqual({ cure: 'salt is listed twice.' });
});
