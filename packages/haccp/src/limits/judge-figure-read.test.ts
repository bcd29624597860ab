import { expect, test } from 'vitest';
import type { FigureLimit } from '../formula/figure-limit';
import { judgeFigureRead } from './judge-figure-read';

const source = { citation: 'an example', edition: 'none', confirmed: false };
const dry: FigureLimit = { kind: 'figure', of: 'water activity', unit: 'aw', max: 910, source };

test.each([
  ['on the most', { value: 0.91, unit: 'aw' }, 'met'],
  ['a thousandth above it', { value: 0.911, unit: 'aw' }, 'missed'],
  ['with four decimals', { value: 0.9101, unit: 'aw' }, 'undetermined'],
  ['in another unit', { value: 0.8, unit: 'pH' }, 'undetermined'],
  ['not read', undefined, 'undetermined'],
])('a water activity %s', (_case, read, kind) => {
  expect(judgeFigureRead(read, dry).kind).toBe(kind);
});
