import { describe, expect, test } from 'vitest';
import { aFileOf, aRow } from './a-row.test-data';
import { cookedPoultry } from './fsis-poultry';
import { heldRows, readHeld } from './held-rows';
import { limitsIn } from './limits-in';
import { both } from './printed';
import { exactly, readBounds, readSeconds, readStage, readTemperature } from './read-cell';
import { readSet } from './read-set';
import type { Table } from './set-file';

describe('a cell is read exactly', () => {
  test.each([
    ['41 °F (5 °C)', { '°F': 4100, '°C': 500 }],
    ['-18 °C', { '°C': -1800 }],
    ['120 °F', { '°F': 12_000 }],
    ['137 °F (58.4 °C)', { '°F': 13_700, '°C': 5840 }],
  ])('temperature %s', (text, printed) => expect(readTemperature(text)).toEqual(printed));

  test.each([
    ['63.3 min', 3798],
    ['16.9 s', 16.9],
    ['0 s', 0],
    ['1.6 h', 5760],
    ['1.75 h', 6300],
  ])('time %s', (text, seconds) => {
    expect(readSeconds(text)).toBe(seconds);
  });

  const percent = (text: string) => exactly(text.replace(' %', ''), 3);
  test.each([
    ['≤ 30 %', { max: 30_000 }],
    ['≥ 3.5 %', { min: 3500 }],
    ['≥ 40 % and ≤ 80 %', { min: 40_000, max: 80_000 }],
    ['> 40 % and < 80 %', { min: 40_000, max: 80_000, signs: { min: '>', max: '<' } }],
  ])('bounds %s', (cell, bounds) => expect(readBounds(cell, percent)).toEqual(bounds));

  test.each([
    ['60 °C to 21 °C in 2 h', { from: { '°C': 6000 }, to: { '°C': 2100 }, withinSeconds: 7200, counted: 'stage' }],
    ['21 °C to 5 °C in 6 h from the start', { from: { '°C': 2100 }, to: { '°C': 500 }, withinSeconds: 21_600, counted: 'start' }],
    ['end of cooking to 3 °C in 150 min', { to: { '°C': 300 }, withinSeconds: 9000, counted: 'end of cooking' }],
  ])('stage %s', (text, stage) => expect(readStage(text)).toEqual(stage));

  test.each([
    ['a temperature without its unit', () => readTemperature('71')],
    ['a temperature in kelvin', () => readTemperature('344 K')],
    ['°C first', () => readTemperature('71 °C (160 °F)')],
    ['a temperature with three decimals', () => readTemperature('71.111 °C')],
    ['a pair with three decimals', () => both(160, 71.111)],
    ['no time', () => readSeconds('')],
    ['a time without its unit', () => readSeconds('85')],
    ['a time below nothing', () => readSeconds('-3 min')],
    ['a time in days', () => readSeconds('3 days')],
    ['a time too long to count', () => readSeconds(`${'9'.repeat(20)} s`)],
    ['a figure without its sign', () => readBounds('30 %', percent)],
    ['a figure with four decimals', () => aRow({ figure: '≤ 30.0001 %' })],
    ['a figure without its unit', () => aRow({ figure: '≤ 30' })],
    ['a least of what goes in', () => aRow({ kind: 'concentration', of: 'sodium nitrite', figure: '≥ 120 ppm' })],
    ['a stage without its time', () => readStage('60 °C to 21 °C')],
    ['a hold without its time', () => readHeld('70 °C')],
    ['a least of a condition without its unit', () => readSet(aFileOf({ asks: 'n' }, { asks: { n: { kind: 'nitrite', least: '100' } } }))],
    ['a kind that there is not', () => aRow({ kind: 'guess' })],
    ['a work that there is not', () => aRow({ work: 'hearsay' })],
    ['no works at all', () => readSet(aFileOf({}, { works: undefined }))],
    ['a table that there is not', () => aRow({ kind: 'dwell', figure: 'table roast' })],
  ])('or not at all: %s', (_case, read) => expect(read).toThrow(RangeError));
});

describe('holding times', () => {
  const table: Table = {
    columns: ['°F', '°C', 'lean', 'fat'],
    rows: [
      ['130', '54.4', '90 s', '2 min'],
      ['131', '55', '1 min', '50 s'],
    ],
  };

  test('stand in the cell, in a table of their own, or are the longer of two', () => {
    expect(readHeld('70 °C for 2 min; 75 °C for 30 s')).toEqual([
      { at: { '°C': 7000 }, seconds: 120 },
      { at: { '°C': 7500 }, seconds: 30 },
    ]);
    expect(readHeld('table one', { one: { columns: ['°C', 'time'], rows: [['60', '45 min']] } })).toEqual([
      { at: { '°C': 6000 }, seconds: 2700 },
    ]);
    const other = {
      ...table,
      rows: [
        ['130', '54.4', '100 s', '95 s'],
        ['131', '55', '10 s', '55 s'],
      ],
    };
    expect(readHeld('table one and two, lean', { one: table, two: other }).map(({ seconds }) => seconds)).toEqual([100, 60]);
  });

  test('between two columns are the longer of both', () => {
    expect(heldRows([table], ['lean', 'fat'])).toEqual([
      { at: both(130, 54.4), seconds: 120 },
      { at: both(131, 55), seconds: 60 },
    ]);
  });

  test('of half a percent of fat are those of 1 %, and of any more than 12 % those of 12 %', () => {
    expect(cookedPoultry('chicken', 0.5).rows).toEqual(cookedPoultry('chicken', 1).rows);
    expect(cookedPoultry('chicken', 40).rows).toEqual(cookedPoultry('chicken', 12).rows);
  });
});

test('a most that two decimals cannot hold is kept in thousandths and never rounded up', () => {
  const ingoing = (figure: string) => aRow({ kind: 'concentration', of: 'sodium erythorbate', figure, printed: 'so much' }).limit;
  expect(ingoing('≤ 546.875 ppm')).toMatchObject({ max: 54_687, maxThousandths: 546_875 });
  expect(ingoing('≤ 156.25 ppm')).not.toHaveProperty('maxThousandths');
  expect(ingoing('≤ 80 ppm as NO₂')).toMatchObject({ max: 8000, countedAs: 'NO₂' });
});

test('what a row does not say is not there, so that a plan comes back as it was written', () => {
  expect(aRow({ kind: 'concentration', of: 'phosphate', figure: '≤ 5000 ppm', printed: '0.5 %' }).limit).toStrictEqual({
    kind: 'concentration',
    substance: 'phosphate',
    max: 500_000,
    printed: '0.5 %',
    source: { citation: 'an example, 1', edition: '1', confirmed: false },
  });
  expect(Object.keys(aRow().limit)).toEqual(['kind', 'of', 'unit', 'max', 'source']);
});

test('a chill may be shown by its bounds alone: its longest gap is all the time it has, unless the row says another', () => {
  const chill = (figure: string, more = {}) => aRow({ kind: 'cooling', figure, ...more }).limit;
  expect(chill('54.4 °C to 26.6 °C in 1.5 h; 26.6 °C to 4.4 °C in 5 h')).toMatchObject({ longestGapSeconds: 6.5 * 3600 });
  expect(chill('57.2 °C to 21.1 °C in 2 h; 21.1 °C to 5 °C in 6 h from the start')).toMatchObject({ longestGapSeconds: 6 * 3600 });
  expect(chill('49 °C to 13 °C in 6 h', { gap: '6.5 h', begun: '90 min' })).toMatchObject({
    longestGapSeconds: 6.5 * 3600,
    startWithinSeconds: 5400,
  });
});

test('a row says what its work says, unless it says another', () => {
  expect(aRow()).toMatchObject({
    force: 'guide',
    validFrom: '2026',
    conditions: [],
    limit: { source: { citation: 'an example, 1', edition: '1', confirmed: false } },
  });
  expect(aRow({ force: 'archived', from: '2011', until: '2017', cited: 'p. 7', default: 'yes', 'partly read': 'yes' })).toMatchObject({
    force: 'archived',
    validFrom: '2011',
    validUntil: '2017',
    isDefault: true,
    isPartial: true,
    paragraph: '1',
    limit: { source: { citation: 'an example, p. 7' } },
  });
});

test('a group stands for its products, in their order', () => {
  const file = aFileOf({ product: 'hams; jerky' }, { groups: { hams: ['ham, pumped', 'ham, immersed'] } });
  expect(readSet(file).rows[0]?.conditions).toEqual([{ kind: 'product', among: ['ham, pumped', 'ham, immersed', 'jerky'] }]);
});

describe('a table as in another set', () => {
  const other = { ...aFileOf({ known: 'read in the source', default: 'yes' }), set: { ...aFileOf({}).set, id: 'other-1' } };
  const works = { later: { citation: 'an example', edition: '2', validFrom: '2027', force: 'guide' } };
  const taking = (only: { 'as in': string; but?: Record<string, string> }) => ({ ...aFileOf({}, { works }), only });

  test('has its rows, but for the cells that are said', () => {
    expect(readSet(taking({ 'as in': 'other-1' }), [other]).rows).toEqual(readSet(other).rows);
    const [row] = readSet(taking({ 'as in': 'other-1', but: { work: 'later', known: 'from memory', default: '' } }), [other]).rows;
    expect(row).toMatchObject({ known: 'from memory', validFrom: '2027', limit: { source: { edition: '2', confirmed: false } } });
    expect(row?.isDefault).toBeUndefined();
  });

  test('is refused where that set or its table is not there', () => {
    expect(() => readSet(taking({ 'as in': 'other-2' }), [other])).toThrow('takes the table only of other-2, which is not there');
    expect(() => readSet({ ...taking({ 'as in': 'other-1' }), more: { 'as in': 'other-1' } }, [other])).toThrow(
      'the table more of other-1',
    );
  });
});

test('a row without its words is refused', () => {
  expect(() => readSet({ ...aFileOf({}), words: { title: 'An example' } })).toThrow('The row one of example-1 has no title');
});

test('a limit is named by its kind and id', () => {
  const { set, only } = aFileOf({});
  const limit = limitsIn(set, only as Table);
  expect(limit('figure', 'one')).toMatchObject({ of: 'fat', max: 30_000 });
  expect(() => limit('range', 'one')).toThrow('example-1 has no limit one of the kind range');
});
