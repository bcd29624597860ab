import { onCommonScale } from '../quantity/convert-degrees';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { addToLethality, beginLethality, type LethalityOptions } from './add-up-lethality';
import type { LethalitySet } from './lethality-set';

/** `at` in epoch ms; `log10` so far. */
export type LethalityLine = { set: LethalitySet; at: Float64Array; log10: Float64Array };

/**
 * From every reading; only the drawing is thinned, to at most `points` evenly picked readings, first and last included.
 */
export function lethalityOverTime(
  readings: readonly CurveReading[],
  set: LethalitySet,
  points = 500,
  options: LethalityOptions = {},
): LethalityLine {
  const { colder } = prepareCurve(readings);
  const drawn = Math.min(colder.length, Math.max(2, Math.floor(points) || 2));
  const line = { set, at: new Float64Array(drawn), log10: new Float64Array(drawn) };
  const sum = beginLethality(set, options);
  let next = 0;
  colder.forEach(({ at, temperature }, index) => {
    addToLethality(sum, at, onCommonScale(temperature));
    if (index < indexOf(next, drawn, colder.length)) return;
    line.at[next] = at;
    line.log10[next] = sum.byStraightLines;
    next += 1;
  });
  return line;
}

const indexOf = (nth: number, drawn: number, total: number): number => (drawn === 1 ? 0 : Math.round((nth * (total - 1)) / (drawn - 1)));
