import type { DwellRow } from '../kinds/dwell/dwell-limit';
import { kindOf } from '../kinds/registry';
import { canonicalJson } from '../ledger/canonical-json';
import type { PrintedTemperature } from '../quantity/temperature';
import type { Condition } from './condition';
import type { Force, Known, LimitRow, LimitSet } from './limit-set';

export type Difference =
  | { what: 'figure'; here: LimitRow['limit']; there: LimitRow['limit'] }
  /** Seconds at a temperature of a table. */
  | { what: 'time'; at: PrintedTemperature; here: number | undefined; there: number | undefined }
  | { what: 'conditions'; here: readonly Condition[]; there: readonly Condition[] }
  | { what: 'force'; here: Force; there: Force }
  | { what: 'known'; here: Known; there: Known };

export type SetDifferences = {
  onlyHere: LimitRow[];
  onlyThere: LimitRow[];
  /** The other set was read only in part and says nothing of them. */
  notRead: LimitRow[];
  differing: { here: LimitRow; there: LimitRow; differences: Difference[] }[];
};

/** By the id of the rows, in the order of the first set. */
export function differencesBetween(here: LimitSet, there: LimitSet): SetDifferences {
  const other = new Map(there.rows.map((row) => [row.id, row]));
  const own = new Set(here.rows.map(({ id }) => id));
  const missingThere = here.rows.filter(({ id }) => !other.has(id));
  const missingHere = there.rows.filter(({ id }) => !own.has(id));
  return {
    onlyHere: there.isPartial ? [] : missingThere,
    onlyThere: here.isPartial ? [] : missingHere,
    notRead: [...(there.isPartial ? missingThere : []), ...(here.isPartial ? missingHere : [])],
    differing: here.rows.flatMap((row) => {
      const match = other.get(row.id);
      const differences = match ? differencesOf(row, match) : [];
      return match && differences.length > 0 ? [{ here: row, there: match, differences }] : [];
    }),
  };
}

/** Tables row by row, partly read ones by the rows both have; others by what they print. */
export function differencesOf(here: LimitRow, there: LimitRow): Difference[] {
  const isPartial = [here, there].some((row) => row.isPartial);
  const [own, other] = [rowsIn(here), rowsIn(there)];
  const isTable = own.length > 0 && other.length > 0;
  return [
    ...(isTable ? tableDifferences(own, other, isPartial) : figureDifference(here, there)),
    ...(isAlike(here.conditions, there.conditions)
      ? []
      : [{ what: 'conditions' as const, here: here.conditions, there: there.conditions }]),
    ...(here.force === there.force ? [] : [{ what: 'force' as const, here: here.force, there: there.force }]),
    ...(here.known === there.known ? [] : [{ what: 'known' as const, here: here.known, there: there.known }]),
  ];
}

/** Place and longest gap are no difference. */
function figureDifference({ limit: here }: LimitRow, { limit: there }: LimitRow): Difference[] {
  const figures = (limit: LimitRow['limit']) => ({ ...limit, source: undefined, longestGapSeconds: undefined });
  return isAlike(figures(here), figures(there)) ? [] : [{ what: 'figure', here, there }];
}

function tableDifferences(here: readonly DwellRow[], there: readonly DwellRow[], isPartial: boolean): Difference[] {
  const temperatures = [...new Map([...here, ...there].map(({ at }) => [canonicalJson(at), at])).values()];
  const differences = temperatures.flatMap((at) => {
    const [own, other] = [secondsAt(here, at), secondsAt(there, at)];
    return own === other ? [] : [{ what: 'time' as const, at, here: own, there: other }];
  });
  return isPartial ? differences.filter((one) => one.here !== undefined && one.there !== undefined) : differences;
}

const rowsIn = ({ limit }: LimitRow): readonly DwellRow[] => kindOf(limit).rows(limit);
const secondsAt = (rows: readonly DwellRow[], at: PrintedTemperature): number | undefined =>
  rows.find((row) => isAlike(row.at, at))?.seconds;
const isAlike = (one: object, other: object): boolean => canonicalJson(one) === canonicalJson(other);
