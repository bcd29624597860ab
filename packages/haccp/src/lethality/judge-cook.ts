import { above, boundOf } from '../quantity/bound';
import { byProbe, prepareCurve, type CurveReading } from '../thermal/curve';
import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import type { DwellLimit, DwellRow } from '../kinds/dwell/dwell-limit';
import { coded } from '../limits/coded';
import type { Coded, Verdict } from '../limits/verdict';
import type { Lethality } from './lethality';
import { lethalityAtFloors } from './lethality-at-floors';
import type { LethalitySet } from './lethality-set';
import { listeria70For2, salmonellaByTheMeatTable } from './sets';
import { rowsReachedInAll } from './time-at-rows';

/** The verdict is the printed table's and of nothing else. */
export type CookJudged =
  | { verdict: Verdict; by: 'printed row' | 'no holding time needed' }
  | { verdict: Verdict; by: 'nothing yet'; support: LethalitySupport };

/** For a process authority: no verdict follows from them. */
export type LethalitySupport = {
  /** Per probe and set, at the usual floor and, where it matters, the careful one. */
  figures: (Lethality & { probe: string })[];
  /** Time reached in all, but not without a break; only rows that every probe reached. */
  rowsInAll: DwellRow[];
  conditions: readonly Coded[];
};

const CONDITIONS = [coded('estimate-of-other-products'), coded('coldest-point-of-moist-product'), coded('salmonella-is-not-listeria')];

/**
 * In the guideline's order (FSIS-GD-2021-14, pp. 67-68): a printed row; the temperature that needs no time; only then
 * integrated lethality, which is support and never turns missed or undetermined into met.
 */
export function judgeCook(
  readings: readonly CurveReading[],
  limit: DwellLimit,
  context: CurveContext,
  sets: readonly LethalitySet[] = [salmonellaByTheMeatTable, listeria70For2],
): CookJudged {
  const verdict = judgeCurve(readings, limit, context);
  const probes = [...byProbe(readings)];
  if (verdict.kind === 'met') {
    const isInstant = probes.every(([, own]) => reachedAnInstantRow(own, limit));
    return { verdict, by: isInstant ? 'no holding time needed' : 'printed row' };
  }
  const figures = probes.flatMap(([probe, own]) =>
    sets.flatMap((set) => lethalityAtFloors(own, set).map((figure) => ({ ...figure, probe }))),
  );
  const rowsInAll = limit.rows.filter((row) => probes.every(([, own]) => rowsReachedInAll(own, { ...limit, rows: [row] }).length > 0));
  return { verdict, by: 'nothing yet', support: { figures, rowsInAll, conditions: CONDITIONS } };
}

function reachedAnInstantRow(readings: readonly CurveReading[], { rows }: DwellLimit): boolean {
  const instant = rows.filter(({ seconds }) => seconds === 0).map(({ at }) => boundOf(at));
  const { colder } = prepareCurve(readings);
  return colder.some(({ temperature }) => instant.some((bound) => above(temperature, bound) >= 0));
}
