import { expect, test } from 'vitest';
import type { Entry } from '../../../outbox/entry';
import { aLot, aReading, at } from '../test-lots/a-lot';
import { aPoint } from '../test-lots/a-point';
import { ids } from '../test-lots/ids';
import { inEnglish } from '../../../ui/in-english.test-data';
import { keptLines } from './kept-lines';

const lot = aLot({ controlPoints: [{ ...aPoint({ name: 'Cook', takenAs: 'curve', limits: [] }), readings: [aReading('12:40', 95)] }] });
const say = inEnglish('day-sheet');

const entry = (id: string, parts: Partial<Entry> = {}): Entry => ({
  id,
  method: 'PUT',
  path: `/readings/${id}`,
  body: { lotId: lot.lotId },
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
    keptLines([entry('a'), entry('b', { body: { lotId: 'another' } }), entry('c', { body: undefined })], lot, say).map(({ id }) => id),
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
    lot,
    say,
  );
  expect(line?.kept).toEqual({ refused: 'not taken: 28 lb are left of R-0007.' });
});

test('a void that waits stands on the sheet of the lot whose entry it names', () => {
  const voids = (id: string, amends: string) => entry(id, { path: `/voids/${id}`, body: { what: 'reading', amends, reason: 'Twice' } });
  const waiting = [voids('a', ids.of('reading 12:40 95')), voids('b', ids.of('a reading of another lot'))];
  expect(keptLines(waiting, lot, say).map(({ id }) => id)).toEqual(['a']);
});
