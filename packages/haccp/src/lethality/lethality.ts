import type { LethalitySet } from './lethality-set';

/** No number stands without its set: a bare "Listeria log reduction" cannot be written down. */
export type Lethality = {
  readonly set: LethalitySet;
  /** Nothing colder was counted. */
  readonly floorCelsius: number;
  /** log10 reduction. */
  readonly byStraightLines: number;
  /** With the colder end over every gap longer than tolerated: what the readings support. */
  readonly atLeast: number;
  /** First and last reading in epoch ms. */
  readonly restsOn: { readings: number; from?: number; to?: number };
};

/** The lowest row of the official meat table, 130 °F. */
export const FLOOR_CELSIUS = 54.4;
/**
 * 135 °F. At 54.4 °C the tabulated times did not give the expected kill (McMinn et al. 2018, Meat and Muscle Biology),
 * so this floor is shown too wherever it matters.
 */
export const CAREFUL_FLOOR_CELSIUS = 57.2;
