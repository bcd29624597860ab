import { expect, test } from 'vitest';
import { nitriteComminuted } from '../limit-sets/curing';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coldHolding } from '../limit-sets/food-code';
import { judgeAlone } from './judge-alone';
import { rangeExplainer } from '../kinds/range/range-explainer';
import type { RangeLimit } from '../kinds/range/range-limit';
import type { Recorded } from '../kinds/explainer';
import type { CriticalLimit } from './limit';

const { source } = nitriteComminuted;
const explain = (recorded: Pick<Recorded, 'alone'>, limit: CriticalLimit) => {
  const verdict = judgeAlone(recorded.alone[0] ?? {}, limit, {});
  return rangeExplainer.explain(limit as RangeLimit, verdict, recorded as Recorded);
};

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

test('a number in another unit meets no range, whatever is asked for', () => {
  const sour: CriticalLimit = { kind: 'range', measured: 'pH', max: 4600, source };
  const brine: CriticalLimit = { kind: 'range', measured: 'percent', min: 2500, source };
  const read = { value: 3, unit: '%' };
  expect(judgeAlone({ read }, brine, {}).kind).toBe('met');
  for (const unit of ['%', 'lb', 'aw', '°F']) expect(judgeAlone({ read: { value: 3, unit } }, sour, {}).kind).toBe('undetermined');
  expect(judgeAlone({ read: { value: 38, unit: 'pH' } }, coldHolding, {}).kind).toBe('undetermined');
  expect(explain({ alone: [{ read }] }, sour).steps).toEqual([]);
});

test('what no single value decides is doubt', () => {
  for (const limit of [nitriteComminuted, cookedMeat65Log]) {
    expect(judgeAlone({ read: { value: 165, unit: '°F' } }, limit, {})).toMatchObject({ kind: 'undetermined', finding: 'not-judged-so' });
  }
});
