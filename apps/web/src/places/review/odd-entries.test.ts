import { expect, test } from 'vitest';
import { oddEntries } from './odd-entries';

type Lot = Parameters<typeof oddEntries>[0];
type Reading = Lot['controlPoints'][number]['readings'][number];

const at = (time: string) => `2026-03-02T${time}:00Z`;
const made = (time: string, name = 'Ivo Tarn') => ({
  personId: 'p',
  name,
  at: at(time),
  recordedAt: at(time),
  station: '',
});
const aReading = (readingId: string, value: number, more: Partial<Reading> = {}): Reading => ({
  readingId,
  controlPointId: 'chill',
  probe: '',
  entered: { value, unit: '°F' },
  judged: [],
  flags: [],
  made: made('10:00'),
  reason: '',
  ...more,
});
const aWeighing = (name: string, more: Partial<Lot['weighings'][number]> = {}): Lot['weighings'][number] => ({
  weighingId: name,
  item: { itemId: name, name },
  weight: { value: 40, unit: 'g', grams: 40 },
  judged: [],
  flags: [],
  made: made('09:00'),
  reason: '',
  ...more,
});
const aLot = (lot: Partial<Lot> & { readings?: Reading[] }): Lot => ({
  inputs: [],
  weighings: [],
  packings: [],
  controlPoints: [{ controlPoint: { name: 'Chilling' }, readings: lot.readings ?? [] }],
  ...lot,
});

test('a corrected reading shows what stood there before, what stands there now, and why', () => {
  const readings = [
    aReading('wrong', 14.1, { amendedBy: 'right' }),
    aReading('right', 141, { amends: 'wrong', reason: 'point set wrongly', made: made('10:04') }),
  ];
  expect(oddEntries(aLot({ readings }))).toEqual([
    {
      what: 'Reading at Chilling',
      remark: 'corrected; point set wrongly',
      by: 'Ivo Tarn',
      first: at('10:04'),
      last: at('10:04'),
      correction: { before: '14.1 °F', after: '141 °F' },
    },
  ]);
});

test('readings flagged alike stand on one line with the first and the last of them', () => {
  const late = (id: string, time: string) => aReading(id, 100, { flags: ['recorded-late'], made: made(time) });
  expect(oddEntries(aLot({ readings: [late('b', '11:00'), late('a', '10:00'), late('c', '12:00')] }))).toEqual([
    {
      what: '3 readings at Chilling',
      remark: 'recorded more than 15 minutes after it was taken',
      by: 'Ivo Tarn',
      first: at('10:00'),
      last: at('12:00'),
    },
  ]);
});

test('other flags and other persons are lines of their own', () => {
  const weighings = [
    aWeighing('Salt', { flags: ['instrument-overdue'] }),
    aWeighing('Pepper', { flags: ['instrument-overdue'] }),
    aWeighing('Garlic', { flags: ['instrument-overdue'], made: made('09:00', 'Nell Varrow') }),
    aWeighing('Paprika', { flags: ['out-of-order'] }),
  ];
  expect(oddEntries(aLot({ weighings })).map(({ what, by }) => [what, by])).toEqual([
    ['2 weighings', 'Ivo Tarn'],
    ['Weighing of Garlic', 'Nell Varrow'],
    ['Weighing of Paprika', 'Ivo Tarn'],
  ]);
});

test('an entry that was corrected is not flagged any more', () => {
  const readings = [aReading('wrong', 14.1, { flags: ['unusual-value'], amendedBy: 'right' })];
  expect(oddEntries(aLot({ readings }))).toEqual([]);
});
