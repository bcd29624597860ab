import { boundOf } from '../../quantity/bound';
import { DEGREES, type TemperatureUnit } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { slipOfGap } from '../slips';
import type { DwellLimit, DwellRow } from './dwell-limit';
import { rowsOf } from './dwell-rows';
import { sayRow } from './say-row';

export const dwell: Kind<DwellLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: false,
  unitsRead: () => DEGREES,
  say,
  fault: (limit) => (rowsOf(limit) ? undefined : 'The table of holding times is empty or its rows contradict each other.'),
  slips: (limit) => [...slipsOfRows(limit.rows), ...slipOfGap(limit)],
  temperatures: ({ rows }) => rows.map(({ at }) => at),
  ruled: ({ rows }) => ends(rows).map(({ at }) => at),
  rows: ({ rows }) => rows,
};

function say({ rows }: DwellLimit, unit: TemperatureUnit): string {
  const [first] = rows;
  if (!first) return 'no row';
  if (rows.length <= 3) return rows.map((row) => sayRow(row, unit)).join(', or ');
  const last = rows.at(-1) as DwellRow;
  return `one row of the table held, ${sayRow(first, unit)} … ${sayRow(last, unit)}`;
}

/** A hotter row that takes longer. */
function slipsOfRows(rows: readonly DwellRow[]): string[] {
  return rows.flatMap((row, index) => {
    const before = rows[index - 1];
    if (!before) return [];
    const isHotter = DEGREES.every((unit) => boundOf(row.at)[unit] > boundOf(before.at)[unit]);
    return [
      ...(isHotter ? [] : [`Row ${index + 1} is not hotter than the one before.`]),
      ...(row.seconds <= before.seconds ? [] : [`Row ${index + 1} takes longer than the colder one before.`]),
    ];
  });
}

const ends = (rows: readonly DwellRow[]): readonly DwellRow[] => (rows.length <= 2 ? rows : [...rows.slice(0, 1), ...rows.slice(-1)]);
