import type { PointExplained } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { tell } from '../../../ui/tell-here.test-data';
import { standing } from './standing';

const verdict = (kind: 'met' | 'missed' | 'undetermined', finding: string) =>
  ({ verdict: { kind, finding, figures: {}, notes: [] } as Verdict }) as PointExplained['limits'][number];
const point = (stands: PointExplained['stands'], ...limits: PointExplained['limits']) => ({ stands, limits }) as PointExplained;

test('the sentence is that of the limit by which it stands', () => {
  const limits = [verdict('met', 'attested-yes'), verdict('missed', 'attested-no')];
  expect(standing(point('missed', ...limits), tell)).toEqual({ state: 'missed', code: 'missed', because: 'The statement does not hold.' });
  expect(standing(point('running', verdict('undetermined', 'not-attested')), tell)).toMatchObject({
    code: 'running',
    because: 'There is no answer yet.',
  });
});

test('nothing recorded is no verdict', () => {
  expect(standing(point('not-started'), tell)).toEqual({ state: 'undetermined', code: 'nothing-recorded' });
  expect(standing(point('met'), tell).because).toBeUndefined();
});

test('what is missed is headed so while it goes on', () => {
  const limits = [verdict('missed', 'Too late.')];
  Object.assign(limits[0]?.verdict ?? {}, { still: 'cooling', running: { stage: '80 → 40 °F', bound: '40 °F' } });
  expect(standing(point('missed', ...limits), tell).code).toBe('missed-still-cooling');
});
