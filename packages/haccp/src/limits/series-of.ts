import { scaled } from '../quantity/decimal';
import { kindOf } from '../kinds/registry';
import { MASSES, type MassUnit } from '../quantity/mass';
import { isTemperatureUnit } from '../quantity/temperature';
import { massOf } from '../quantity/weigh';
import type { AsKept } from '../thermal/instant';
import type { Series } from './series';
import type { CriticalLimit } from './limit';

/** `at` in epoch ms. */
export type ReadValue = AsKept & { at: number; value: number; unit: string; id?: string; probe?: string };

const isMass = (unit: string): unit is MassUnit => (MASSES as readonly string[]).includes(unit);

/** Values that no number can hold are kept, to be reported and left out. */
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

export const unitsRead = (limits: readonly CriticalLimit[]): readonly string[] => [
  ...new Set(limits.flatMap((limit) => kindOf(limit).unitsRead(limit))),
];
