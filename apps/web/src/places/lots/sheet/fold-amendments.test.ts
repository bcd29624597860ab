import { expect, test } from 'vitest';
import { foldAmendments, type Entry } from './fold-amendments';

const entry = (id: string, value: string, rest: Partial<Entry> = {}): Entry => ({
  id,
  kind: 'reading',
  at: 0,
  what: 'Cook',
  value,
  who: 'Ada Brook',
  notes: [],
  flags: [],
  judged: [],
  reason: '',
  ...rest,
});

test('a correction of a correction is one line: the newest counts, both earlier ones stay with their reasons', () => {
  const lines = foldAmendments([
    entry('a', '515 °F'),
    entry('c', '151.5 °F', { amends: 'b', reason: 'typed one short' }),
    entry('b', '151 °F', { amends: 'a', reason: 'point forgotten' }),
  ]);
  expect(lines).toMatchObject([
    {
      id: 'c',
      value: '151.5 °F',
      corrects: [
        { value: '515 °F', reason: 'point forgotten' },
        { value: '151 °F', reason: 'typed one short' },
      ],
    },
  ]);
});

test('an entry whose correction is not there stays on the sheet', () => {
  expect(foldAmendments([entry('a', '515 °F', { amendedBy: 'elsewhere' }), entry('b', '36 °F', { amends: 'gone' })])).toHaveLength(2);
});

test('the deviation of a corrected entry hangs under the line that counts', () => {
  const [line] = foldAmendments([entry('a', '80 °F', { deviationId: 'd' }), entry('b', '180 °F', { amends: 'a' })]);
  expect(line?.deviationId).toBe('d');
});
