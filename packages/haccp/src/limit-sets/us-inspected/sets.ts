import type { LimitRow, LimitSet } from '../limit-set';
import { baconRows } from './bacon';
import { compositionRows } from './composition';
import { cookingRows } from './cooking';
import { cooking1999 } from './cooking-1999';
import { cooling1999, cooling2017, cooling2021, coolingStandards, receivingRows } from './cooling';
import { curingRows } from './curing';
import { dryingRows, trichinaeRows } from './drying';

const jurisdiction = 'US, inspected establishment';
const shared = [
  ...coolingStandards,
  ...receivingRows,
  ...curingRows,
  ...baconRows,
  ...compositionRows,
  ...dryingRows,
  ...trichinaeRows,
];
/** Federal or equal-to state inspection. 1999 and 2017 users had to move on by 14 December 2022 (86 FR 71007). */
export const usInspectedSets: readonly LimitSet[] = [
  {
    id: 'us-inspected-1999',
    jurisdiction,
    title: 'US, inspected establishment, Appendices A and B of 1999',
    edition: '1999',
    validFrom: '1999-01',
    rows: [...cooking1999, ...cooling1999, ...shared],
  },
  {
    id: 'us-inspected-2017',
    jurisdiction,
    title: 'US, inspected establishment, Appendices A and B of 2017',
    edition: 'June 2017',
    validFrom: '2017-06',
    replaces: 'us-inspected-1999',
    isPartial: true,
    rows: [...cooling2017, ...shared],
  },
  {
    id: 'us-inspected-2021',
    jurisdiction,
    title: 'US, inspected establishment',
    edition: 'December 2021',
    validFrom: '2021-12-14',
    replaces: 'us-inspected-2017',
    rows: [...cookingRows, ...cooling2021, ...optionsStillRead(), ...shared],
  },
];

/** The 1999 options stay on offer beside the later ones, since those could not be read in the original. */
function optionsStillRead(): LimitRow[] {
  return cooling1999.map((row) => ({ ...row, id: `${row.id}-1999` }));
}
