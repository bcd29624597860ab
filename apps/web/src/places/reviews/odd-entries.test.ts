import { writeQuantity } from '@larderbook/messages';
import { expect, test } from 'vitest';
import { inEnglish } from '../../ui/in-english.test-data';
import { saidInEnglish } from '../../ui/tell-here.test-data';
import { oddEntries, type OddVoice } from './odd-entries';

type Lot = Parameters<typeof oddEntries>[0];
type Reading = Lot['controlPoints'][number]['readings'][number];

const voice: OddVoice = {
  say: inEnglish('reviews'),
  sayEntry: inEnglish('entries'),
  tellSaid: saidInEnglish,
  quantity: ({ value, unit }) => writeQuantity({ value: String(value), unit }, 'en-US'),
};

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
  corrections: [],
  controlPoints: [{ controlPoint: { name: 'Chilling' }, readings: lot.readings ?? [] }],
  ...lot,
});

test('a corrected reading shows what stood there before, what stands there now, and why', () => {
  const readings = [
    aReading('wrong', 14.1, { amendedBy: 'right' }),
    aReading('right', 141, { amends: 'wrong', reason: 'point set wrongly', made: made('10:04') }),
  ];
  expect(oddEntries(aLot({ readings }), voice)).toEqual([
    {
      what: 'Reading at Chilling',
      remarks: ['corrected: point set wrongly'],
      by: 'Ivo Tarn',
      first: at('10:04'),
      last: at('10:04'),
      correction: { before: '14.1 °F', after: '141 °F' },
    },
  ]);
});

test('readings flagged alike stand on one line with the first and the last of them', () => {
  const late = (id: string, time: string) => aReading(id, 100, { flags: ['recorded-late'], made: made(time) });
  expect(oddEntries(aLot({ readings: [late('b', '11:00'), late('a', '10:00'), late('c', '12:00')] }), voice)).toEqual([
    {
      what: '3 readings at Chilling',
      remarks: ['recorded more than 15 minutes after it was taken'],
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
  expect(oddEntries(aLot({ weighings }), voice).map(({ what, by }) => [what, by])).toEqual([
    ['2 weighings', 'Ivo Tarn'],
    ['Weighing of Garlic', 'Nell Varrow'],
    ['Weighing of Paprika', 'Ivo Tarn'],
  ]);
});

test('an entry that was corrected is not flagged any more', () => {
  const readings = [aReading('wrong', 14.1, { flags: ['unusual-value'], amendedBy: 'right' })];
  expect(oddEntries(aLot({ readings }), voice)).toEqual([]);
});

test('what was said of readings stands once each time it was said, with who said it and why', () => {
  const said = (clarificationId: string, word: 'not of the core' | 'as recorded', time: string) => ({
    ...{ clarificationId, word, reason: 'Probe on the table', made: made(time, 'Ida Marsh') },
  });
  const out = said('one', 'not of the core', '11:00');
  const readings = [
    aReading('a', 168, { clarifications: [out] }),
    aReading('b', 168.1, { clarifications: [out, said('two', 'as recorded', '11:30')] }),
    aReading('c', 121),
  ];
  expect(oddEntries(aLot({ readings }), voice)).toEqual([
    {
      what: '2 readings at Chilling: 168 °F and 168.1 °F',
      remarks: ['Not of the core', 'Probe on the table'],
      by: 'Ida Marsh',
      first: at('11:00'),
      last: at('11:00'),
    },
    {
      what: 'Reading at Chilling: 168.1 °F',
      remarks: ['As recorded', 'Probe on the table'],
      by: 'Ida Marsh',
      first: at('11:30'),
      last: at('11:30'),
    },
  ]);
});

test('what was voided is struck through with why, and what was corrected of goods has a line', () => {
  const voided = { reason: 'Another lot.', made: made('10:09', 'Nell Varrow') };
  const corrections: Lot['corrections'] = [
    {
      ...{ correctionId: 'c', about: 'packing', id: 'k', what: { code: 'entry-packing', figures: { code: '26061-1-P1' } }, voided: false },
      ...{ reason: 'Counted again.', made: made('11:00'), changes: [] },
    },
  ];
  const readings = [aReading('theirs', 38, { amendedBy: 'void', voided })];
  expect(oddEntries(aLot({ readings, corrections }), voice)).toMatchObject([
    { what: 'Reading at Chilling', remarks: ['voided: Another lot.'], by: 'Nell Varrow', correction: { before: '38 °F', after: '' } },
    { what: 'Packing 26061-1-P1', remarks: ['corrected: Counted again.'], by: 'Ivo Tarn', first: at('11:00') },
  ]);
});
