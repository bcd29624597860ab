import { scaled } from '../quantity/decimal';
import { kindOf } from '../kinds/registry';
import { MASSES, type MassUnit } from '../quantity/mass';
import { isTemperatureUnit } from '../quantity/temperature';
import { massOf } from '../quantity/weigh';
import type { AsKept } from '../thermal/instant';
import type { Series } from './series';
import type { CriticalLimit } from './limit';

/** A number as it was read at a control point: value, unit, moment (epoch ms), and which probe or piece. */
export type ReadValue = AsKept & { at: number; value: number; unit: string; id?: string; probe?: string };

const isMass = (unit: string): unit is MassUnit => (MASSES as readonly string[]).includes(unit);

/** Readings sorted by what they are readings of. What no number can hold is kept, to be said and left out. */
export function seriesOf(reads: readonly ReadValue[]): Series {
  return {
    temperatures: reads.flatMap(({ unit, value, ...at }) =>
      isTemperatureUnit(unit) ? [{ ...at, temperature: { hundredths: scaled(value, 2) ?? NaN, unit } }] : [],
    ),
    acid: reads.flatMap(({ value, unit, ...at }) => (unit === 'pH' ? [{ ...at, pH: { thousandths: scaled(value, 3) ?? NaN } }] : [])),
    weights: reads.flatMap(({ unit, value, ...at }) =>
      isMass(unit) ? [{ ...at, mass: scaled(value, 3) === undefined ? 0n : massOf({ value, unit }) }] : [],
    ),
  };
}

/** The units a control point is read in, by its limits: none where nothing is read as a number. */
export const unitsRead = (limits: readonly CriticalLimit[]): readonly string[] => [
  ...new Set(limits.flatMap((limit) => kindOf(limit).unitsRead(limit))),
];
