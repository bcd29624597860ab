import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { heldRows } from './held-rows';
import { chicken, turkey } from './published/fsis-cooking-tables.json';
import type { Table } from './set-file';
import { fsisCooking } from './sources';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

/** `other` is any other species, or several. */
export type Poultry = 'chicken' | 'turkey' | 'other';

const FATTEST = 12;
const TABLES: Record<Poultry, { tables: Table[]; place: string }> = {
  chicken: { tables: [chicken], place: 'Table 3, p. 37, chicken' },
  turkey: { tables: [turkey], place: 'Table 4, p. 38, turkey' },
  other: { tables: [chicken, turkey], place: 'Tables 3 and 4, pp. 36-38, the longer of chicken and turkey' },
};

/**
 * For any poultry in it (9 CFR 381.150(a)(1)), by fat in percent. Fat unknown or above 12 %: the 12 % column (p. 39).
 * Another or several species: the longer of the two times (p. 36). Fat between two columns: the longer of both, since
 * the guideline gives no rule for it.
 */
export function cookedPoultry(poultry: Poultry, fatPercent?: number): DwellLimit {
  const { tables, place } = TABLES[poultry];
  const columns = columnsFor(fatPercent);
  const fat = columns.length === 1 ? `${columns[0]} % fat` : `${columns.join(' to ')} % fat`;
  return {
    kind: 'dwell',
    rows: heldRows(
      tables,
      columns.map((percent) => `${percent} % fat`),
    ),
    longestGapSeconds: LONGEST_GAP_SECONDS.hold,
    source: fsisCooking(`${place}, ${fat}, 7-log Salmonella`),
  };
}

/** The strictest reading of the tables. */
export const cookedPoultry7Log: DwellLimit = cookedPoultry('other');

function columnsFor(fatPercent: number | undefined): number[] {
  if (fatPercent === undefined || !(fatPercent >= 0) || fatPercent >= FATTEST) return [FATTEST];
  const below = Math.max(1, Math.floor(fatPercent));
  const above = Math.max(1, Math.ceil(fatPercent));
  return below === above ? [below] : [below, above];
}
