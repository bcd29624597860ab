import type { CurveReading } from '../thermal/curve';
import { addUpLethality, type LethalityOptions } from './add-up-lethality';
import { CAREFUL_FLOOR_CELSIUS, FLOOR_CELSIUS, type Lethality } from './lethality';
import type { LethalitySet } from './lethality-set';

/** In log10. */
const WORTH_SAYING = 0.5;

export function lethalityAtFloors(
  readings: readonly CurveReading[],
  set: LethalitySet,
  options: Omit<LethalityOptions, 'floorCelsius'> = {},
): Lethality[] {
  const usual = addUpLethality(readings, set, { ...options, floorCelsius: FLOOR_CELSIUS });
  const careful = addUpLethality(readings, set, { ...options, floorCelsius: CAREFUL_FLOOR_CELSIUS });
  return usual.byStraightLines - careful.byStraightLines > WORTH_SAYING ? [usual, careful] : [usual];
}
