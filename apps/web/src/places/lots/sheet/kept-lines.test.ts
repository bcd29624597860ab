import { expect, test } from 'vitest';
import type { Entry } from '../../../outbox/entry';
import { at } from '../test-lots/a-lot';
import { inEnglish } from '../../../ui/in-english.test-data';
import { keptLines } from './kept-lines';

const say = inEnglish('day-sheet');

const entry = (id: string, parts: Partial<Entry> = {}): Entry => ({
  id,
  method: 'PUT',
  path: `/readings/${id}`,
  body: { lotId: 'mine' },
  what: 'Chill 95 °F',
  establishmentId: 'e',
  personId: 'p',
  takenAt: at('12:50'),
  state: 'waiting',
  failures: 0,
  ...parts,
});

test('what waits on this device stands on the sheet of its own lot only', () => {
  expect(
    keptLines([entry('a'), entry('b', { body: { lotId: 'another' } }), entry('c', { body: undefined })], 'mine', say).map(({ id }) => id),
  ).toEqual(['a']);
});

test('what the server refused says so in its sentence', () => {
  const [line] = keptLines(
    [
      entry('a', {
        state: 'parked',
        problem: {
          code: 'more-than-there-is',
          title: 'That is more than is left.',
          detail: '28 lb are left of R-0007.',
        },
      }),
    ],
    'mine',
    say,
  );
  expect(line?.kept).toEqual({ refused: 'not taken: 28 lb are left of R-0007.' });
});
