import { boundOf } from '../../quantity/bound';
import type { LimitSlip } from '../../limits/limit-fault-code';
import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { slipOfGap } from '../slips';
import type { DwellLimit, DwellRow } from './dwell-limit';
import { rowsOf } from './dwell-rows';

export const dwell: Kind<DwellLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: false,
  unitsRead: () => DEGREES,
  fault: (limit) => (rowsOf(limit) ? undefined : { code: 'holding-times-unusable' }),
  slips: (limit) => [...slipsOfRows(limit.rows), ...slipOfGap(limit)],
  temperatures: ({ rows }) => rows.map(({ at }) => at),
  ruled: ({ rows }) => ends(rows).map(({ at }) => at),
  rows: ({ rows }) => rows,
};

function slipsOfRows(rows: readonly DwellRow[]): LimitSlip[] {
  return rows.flatMap((row, index): LimitSlip[] => {
    const before = rows[index - 1];
    if (!before) return [];
    const isHotter = DEGREES.every((unit) => boundOf(row.at)[unit] > boundOf(before.at)[unit]);
    return [
      ...(isHotter ? [] : [{ code: 'row-not-hotter', figures: { row: index + 1 } } as const]),
      ...(row.seconds <= before.seconds ? [] : [{ code: 'row-longer', figures: { row: index + 1 } } as const]),
    ];
  });
}

const ends = (rows: readonly DwellRow[]): readonly DwellRow[] => (rows.length <= 2 ? rows : [...rows.slice(0, 1), ...rows.slice(-1)]);
