import type { PointExplained } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { sayStands } from './say-stands';

const verdict = (kind: 'met' | 'missed' | 'undetermined', because: string) =>
  ({ verdict: { kind, because } }) as PointExplained['limits'][number];
const point = (stands: PointExplained['stands'], ...limits: PointExplained['limits']) => ({ stands, limits }) as PointExplained;

test('the sentence is that of the limit by which it stands', () => {
  const limits = [verdict('met', 'In time.'), verdict('missed', 'Too late.')];
  expect(sayStands(point('missed', ...limits))).toEqual({ state: 'missed', word: 'Missed', because: 'Too late.' });
  expect(sayStands(point('running', verdict('undetermined', 'Not there yet.')))).toMatchObject({
    word: 'Running',
    because: 'Not there yet.',
  });
});

test('nothing recorded is no verdict', () => {
  expect(sayStands(point('not-started'))).toEqual({ state: 'undetermined', word: 'Nothing recorded' });
  expect(sayStands(point('met')).because).toBeUndefined();
});

test('what is missed is headed so while it goes on', () => {
  const limits = [verdict('missed', 'Too late.')];
  Object.assign(limits[0]?.verdict ?? {}, { still: 'cooling', running: { stage: '80 → 40 °F', bound: '40 °F' } });
  expect(sayStands(point('missed', ...limits)).word).toBe('Missed, still cooling');
});
