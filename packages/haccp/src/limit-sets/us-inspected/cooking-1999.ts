import type { Known, LimitRow } from '../limit-set';
import { attest } from '../write-row';
import { cookingRows } from './cooking';

/** Natural casing counts as one that holds moisture since 2021 (FSIS-GD-2021-14, pp. 6-7). */
const casingsOf1999 = 'The product was in a casing that holds moisture: cellulose, collagen, fibrous or plastic.';

/** The 5-log column and the tables by fat came with the later edition (FSIS-GD-2021-14, pp. 6, 39, 59). */
export const cooking1999: readonly LimitRow[] = cookingRows
  .filter(({ id }) => /^(cooked-meat-(6\.5|7)-log|poultry-roll-|humidity-|target-(poultry|roast))/.test(id))
  .map(asOf1999);

/**
 * The 6.5-log and 7-log columns are the same row for row; come-up was not in the table of 1999. The targets stand in
 * the regulation itself.
 */
function asOf1999(row: LimitRow): LimitRow {
  if (row.id.startsWith('target-')) return row;
  const known = knownOf1999(row.id);
  const source = {
    citation: `FSIS Compliance Guidelines for Meeting Lethality (Appendix A), ${row.title}`,
    edition: 'January 1999, updated June 1999',
    confirmed: known === 'read in the source',
  };
  const limit = { ...row.limit, source } as LimitRow['limit'];
  return {
    ...row,
    known,
    isDefault: row.isDefault && source.confirmed,
    validFrom: '1999-01',
    paragraph: row.title,
    conditions: row.conditions.filter(({ kind }) => kind !== 'statement'),
    limit: row.id === 'humidity-not-casing' ? { ...limit, ...attest(casingsOf1999) } : limit,
  };
}

/**
 * Of the edition of 1999 the table for meat was read. FSIS-GD-2021-14 says of the humidity options that they are
 * unchanged (p. 6) and gives the poultry points (p. 39); when humidity need not be addressed in 1999 was read nowhere.
 */
function knownOf1999(id: string): Known {
  if (id.startsWith('humidity-not-')) return 'from memory';
  return id.startsWith('cooked-meat-') ? 'read in the source' : 'second hand';
}
