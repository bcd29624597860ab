import { sayPrinted } from '../quantity/bound';
import { millisecondsOf, sayDuration } from '../quantity/duration';
import type { DwellRow } from '../kinds/dwell/dwell-limit';
import { kindOf } from '../kinds/registry';
import { sayCondition } from './condition';
import type { LimitRow, LimitSet } from './limit-set';
import { sayFigureOf } from './say-row';

/** One thing that two rows on the same matter print differently. `absent` where one has none. */
export type Difference = { what: string; here: string; there: string };

export type SetDifferences = {
  onlyHere: LimitRow[];
  onlyThere: LimitRow[];
  /** Rows of one of which the other, read in part only, says nothing. */
  notRead: LimitRow[];
  differing: { here: LimitRow; there: LimitRow; differences: Difference[] }[];
};

/** Two sets side by side, matched by the id of their rows, in the order of the first. */
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

/** A whole table is compared row by row, one read in part by the rows both have; everything else by what it prints. */
export function differencesOf(here: LimitRow, there: LimitRow): Difference[] {
  const isPartial = Boolean(here.isPartial || there.isPartial);
  const [own, other] = [rowsIn(here), rowsIn(there)];
  const figure =
    own.length > 0 && other.length > 0 ? tableDifferences(own, other, isPartial) : pair('figure', figureText(here), figureText(there));
  return [
    ...figure,
    ...pair('conditions', conditionText(here), conditionText(there)),
    ...pair('force', here.force, there.force),
    ...pair('known', here.known, there.known),
  ];
}

function tableDifferences(here: readonly DwellRow[], there: readonly DwellRow[], isPartial: boolean): Difference[] {
  const labels = [...new Set([...here, ...there].map(label))];
  const differences = labels.flatMap((what) => pair(what, timeAt(here, what), timeAt(there, what)));
  return isPartial ? differences.filter((one) => one.here !== ABSENT && one.there !== ABSENT) : differences;
}

const rowsIn = ({ limit }: LimitRow): readonly DwellRow[] => kindOf(limit).rows(limit);
const label = ({ at }: DwellRow): string => sayPrinted(at, at['°F'] === undefined ? '°C' : '°F');
const figureText = (row: LimitRow): string => sayFigureOf(row).join('; ');
const conditionText = ({ conditions }: LimitRow): string => conditions.map(sayCondition).join('; ') || ABSENT;
const ABSENT = 'absent';

function timeAt(rows: readonly DwellRow[], what: string): string {
  const row = rows.find((one) => label(one) === what);
  if (!row) return ABSENT;
  return row.seconds === 0 ? 'no holding time' : sayDuration(millisecondsOf(row.seconds));
}

const pair = (what: string, here: string, there: string): Difference[] => (here === there ? [] : [{ what, here, there }]);
