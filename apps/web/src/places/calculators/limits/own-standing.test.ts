import { expect, test } from 'vitest';
import { nameOfSet, type SetHead } from './name-of-set';
import { standingOf } from './own-standing';
import { inEnglish } from '../../../ui/in-english.test-data';

const set = (edition: string, validFrom: string, replacedBy?: string): SetHead => ({
  setId: edition,
  jurisdiction: 'own',
  title: 'Our smokehouse',
  edition,
  validFrom,
  usual: false,
  rows: 1,
  own: { recordedAt: '2026-02-01T08:00:00Z', recordedBy: 'Odile Farrow', replacedBy },
});
const next = set('2026-2', '2026-03-10');
const sets = [next, set('2026-1', '2026-02-01', '2026-2')];

test.each([
  ['the day before', '2026-03-09', ['Will count from Mar 10, 2026', 'Counts until Our smokehouse, 2026-2 takes its place']],
  ['from its day on', '2026-03-10', ['Counts', 'Replaced by Our smokehouse, 2026-2']],
])('%s an edition and the one before it stand so', (_case, today, standings) => {
  expect(sets.map((each) => standingOf(each, sets, today, inEnglish('calculators')))).toEqual(standings);
});

test('a title that names its edition is not followed by it again', () => {
  expect(nameOfSet({ title: 'Food Code 2022', edition: '2022' }, inEnglish('calculators'))).toBe('Food Code 2022');
});
