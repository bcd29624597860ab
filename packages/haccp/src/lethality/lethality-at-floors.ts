import type { CurveReading } from '../thermal/curve';
import { addUpLethality, type LethalityOptions } from './add-up-lethality';
import { CAREFUL_FLOOR_CELSIUS, FLOOR_CELSIUS, type Lethality } from './lethality';
import type { LethalitySet } from './lethality-set';

/** Two floors that differ by more logs than this are both shown. */
const WORTH_SAYING = 0.5;

/** The usual floor, and the careful one beside it where the two differ by more than half a log. */
export function lethalityAtFloors(
  readings: readonly CurveReading[],
  set: LethalitySet,
  options: Omit<LethalityOptions, 'floorCelsius'> = {},
): Lethality[] {
  const usual = addUpLethality(readings, set, { ...options, floorCelsius: FLOOR_CELSIUS });
  const careful = addUpLethality(readings, set, { ...options, floorCelsius: CAREFUL_FLOOR_CELSIUS });
  return usual.byStraightLines - careful.byStraightLines > WORTH_SAYING ? [usual, careful] : [usual];
}
