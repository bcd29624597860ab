import type { EnteredMass, MassUnit } from '../quantity/mass';
import { massOf } from '../quantity/weigh';

/** Percent of the heaviest. A drying piece gets lighter; more is frost or another scale. Common practice, no source. */
const HEAVIER = 105n;
/** Percent: a piece loses at most half from one weighing to the next, as when judged. */
const LIGHTER = 50n;
const UNITS: readonly MassUnit[] = ['g', 'kg', 'oz', 'lb'];

export type UsualOfPiece = { least: bigint; most: bigint };

/** @param before weighings of the piece in order of time (femtograms) */
export function usualOfPiece(before: readonly bigint[]): UsualOfPiece | undefined {
  const last = before[before.length - 1];
  if (last === undefined) return undefined;
  const heaviest = before.reduce((most, one) => (one > most ? one : most));
  return { least: (last * LIGHTER) / 100n, most: (heaviest * HEAVIER) / 100n };
}

/** `meant` is the unit in which the same number would be usual, if there is one. */
export function askAboutPiece(entered: EnteredMass, usual: UsualOfPiece): { meant?: EnteredMass } | undefined {
  const isUsual = (weight: EnteredMass) => massOf(weight) >= usual.least && massOf(weight) <= usual.most;
  if (isUsual(entered)) return undefined;
  return { meant: UNITS.map((unit) => ({ value: entered.value, unit })).find(isUsual) };
}
