import type { LimitRowShown } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { byPurpose, matching } from './rows-by-purpose';

const row = (rowId: string, title: string, purpose: LimitRowShown['purpose'], says: string): LimitRowShown => ({
  rowId,
  title,
  purpose,
  says: [says],
  table: [],
  paragraph: '3-501.16',
  force: 'law',
  known: 'read in the source',
  validFrom: '2022',
  source: { citation: 'A code', edition: '2022', confirmed: true },
  conditions: [],
  usedBy: [],
});
const cold = row('cold', 'Cold holding', 'cold holding', '≤ 41 °F (5 °C)');
const cool = row('cool', 'Cooling', 'cooling', '135 → 70 °F within 2 h');
const roast = row('roast', 'Roast', 'cooking', '130 °F for 1 h 52 min');

test('every word has to be found, in whichever part of the row', () => {
  expect(matching([cold, cool, roast], '')).toHaveLength(3);
  expect(matching([cold, cool, roast], 'COOL 2 h')).toEqual([cool]);
  expect(matching([cold, cool, roast], '3-501 130')).toEqual([roast]);
  expect(matching([cold, cool, roast], 'veal')).toEqual([]);
});

test('rows stand under what they are about, in the order of the set', () => {
  expect(byPurpose([cold, roast, { ...cold, rowId: 'cold-2' }]).map(([purpose, rows]) => [purpose, rows.length])).toEqual([
    ['cold holding', 2],
    ['cooking', 1],
  ]);
});
