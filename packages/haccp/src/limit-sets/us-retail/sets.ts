import type { LimitRow, LimitSet } from '../limit-set';
import { cookingRows } from './cooking';
import { keepingRows } from './keeping';
import { rowsOf2013, rowsOf2026 } from './other-editions';

const jurisdiction = 'US, retail and catering';
const title = (edition: string) => `US, retail and catering, Food Code ${edition}`;
const rowsOf2022 = [...cookingRows, ...keepingRows];

/** The edition is a setting of the establishment: the one its state or county adopted. */
export const usRetailSets: readonly LimitSet[] = [
  {
    id: 'us-retail-2013',
    jurisdiction,
    title: title('2013'),
    edition: '2013',
    validFrom: '2013',
    isPartial: true,
    rows: rowsOf2013,
  },
  {
    id: 'us-retail-2017',
    jurisdiction,
    title: title('2017'),
    edition: '2017',
    validFrom: '2017',
    replaces: 'us-retail-2013',
    rows: rowsOf2022.map(rememberedIn2017),
  },
  {
    id: 'us-retail-2022',
    jurisdiction,
    title: title('2022'),
    edition: '2022',
    validFrom: '2022',
    replaces: 'us-retail-2017',
    rows: rowsOf2022,
  },
  {
    id: 'us-retail-2026',
    jurisdiction,
    title: title('2026'),
    edition: '2026',
    validFrom: '2026-09-17',
    replaces: 'us-retail-2022',
    isPartial: true,
    rows: rowsOf2026,
  },
];

/** The edition of 2017 was not read: the figures of 2022, remembered to be the same there, never a default. */
function rememberedIn2017(row: LimitRow): LimitRow {
  const source = { ...row.limit.source, edition: '2017', confirmed: false, url: undefined };
  return {
    ...row,
    known: 'from memory',
    isDefault: undefined,
    validFrom: '2017',
    limit: { ...row.limit, source },
  };
}
