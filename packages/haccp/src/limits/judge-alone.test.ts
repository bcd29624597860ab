import { expect, test } from 'vitest';
import { nitriteComminuted } from '../limit-sets/curing';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coldHolding } from '../limit-sets/food-code';
import { judgeAlone } from './judge-alone';
import type { CriticalLimit } from './limit';

const { source } = nitriteComminuted;

test.each<[string, CriticalLimit, Parameters<typeof judgeAlone>[0], string]>([
  ['a temperature', coldHolding, { read: { value: 38, unit: '°F' } }, 'met'],
  ['a number', { kind: 'range', measured: 'pH', max: 5300, source }, { read: { value: 5.4, unit: 'pH' } }, 'missed'],
  ['nothing read', coldHolding, {}, 'undetermined'],
  ['a figure', { kind: 'figure', of: 'fat', unit: '%', max: 30_000, source }, { read: { value: 29, unit: '%' } }, 'met'],
  ['an answer', { kind: 'attestation', statement: 'It is right.', source }, { answer: { holds: false, seen: '' } }, 'missed'],
  [
    'how humidity was kept, without its cook',
    { kind: 'attestation', statement: 'It was humid.', asks: 'humidity', source },
    { answer: { holds: true, seen: 'The wet bulb.' } },
    'undetermined',
  ],
])('%s is judged by itself', (_what, limit, one, kind) => {
  expect(judgeAlone(one, limit, {}).kind).toBe(kind);
});

test('what no single value decides is doubt', () => {
  for (const limit of [nitriteComminuted, cookedMeat65Log]) {
    expect(judgeAlone({ read: { value: 165, unit: '°F' } }, limit, {})).toMatchObject({ kind: 'undetermined', finding: 'not-judged-so' });
  }
});
