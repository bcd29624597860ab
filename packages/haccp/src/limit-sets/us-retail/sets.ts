import type { LimitRow, LimitSet } from '../limit-set';
import { foodCodeRows, rowsOf2013, rowsOf2026 } from './rows';

const jurisdiction = 'US, retail and catering';
const title = (edition: string) => `US, retail and catering, Food Code ${edition}`;

/** The edition is a setting of the establishment: the one its state or county adopted. */
export const usRetailSets: readonly LimitSet[] = [
  {
    id: 'us-retail-2013',
    jurisdiction,
    title: title('2013'),
    edition: '2013',
    validFrom: '2013',
    rows: overlaid(foodCodeRows.map(remembered('2013')), rowsOf2013),
  },
  {
    id: 'us-retail-2017',
    jurisdiction,
    title: title('2017'),
    edition: '2017',
    validFrom: '2017',
    replaces: 'us-retail-2013',
    rows: foodCodeRows.map(remembered('2017')),
  },
  {
    id: 'us-retail-2022',
    jurisdiction,
    title: title('2022'),
    edition: '2022',
    validFrom: '2022',
    replaces: 'us-retail-2017',
    rows: foodCodeRows,
  },
  {
    id: 'us-retail-2026',
    jurisdiction,
    title: title('2026'),
    edition: '2026',
    validFrom: '2026-09-17',
    replaces: 'us-retail-2022',
    rows: rowsOf2026,
  },
];

/** An edition that was not read: the figures of 2022, as remembered to stand there, never a default. */
function remembered(edition: string): (row: LimitRow) => LimitRow {
  return (row) => {
    const source = { ...row.limit.source, edition, confirmed: false, url: undefined };
    return { ...row, known: 'from memory', isDefault: undefined, validFrom: edition, limit: { ...row.limit, source } };
  };
}

function overlaid(rows: readonly LimitRow[], own: readonly LimitRow[]): LimitRow[] {
  return rows.map((row) => own.find(({ id }) => id === row.id) ?? row);
}
