import type { CurveContext } from '../limits/curve-context';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { rowIn } from '../kinds/dwell/row-in';
import { coded } from '../limits/coded';
import type { Coded, Phrase } from '../limits/verdict';
import { judgeCook, type CookJudged } from '../lethality/judge-cook';
import type { Lethality } from '../lethality/lethality';
import { lethalityAtFloors } from '../lethality/lethality-at-floors';
import { lethalityOverTime } from '../lethality/lethality-over-time';
import type { LethalitySet } from '../lethality/lethality-set';
import { lethalityFound, MOST_TOLD } from '../lethality/lethality-found';
import { nameOfSet } from '../lethality/name-of-set';
import { listeria70For2, salmonellaByTheMeatTable } from '../lethality/sets';
import type { TemperatureUnit } from '../quantity/temperature';
import { byProbe, type CurveReading } from '../thermal/curve';
import { cautions } from '../calculators/cautions';

/** The first is drawn first. */
const SHOWN: readonly LethalitySet[] = [salmonellaByTheMeatTable, listeria70For2];
const POINTS = 300;

/** Capped, and in half logs. */
export type LethalityFigure = Lethality & { probe: string; found: Coded };

/** Support for a process authority, never a verdict. */
export type LethalityExplained = {
  /** A row of the printed table, a temperature that needs no time, or nothing yet. */
  judgedBy: CookJudged['by'];
  figures: LethalityFigure[];
  /** Printed rows whose time is reached in all, but not without a break. */
  rowsInAll: Phrase[];
  conditions: Coded[];
};

export type LethalityDrawn = { name: string | Phrase; found: Coded; points: { at: number; log10: number }[] };

export function explainLethality(
  readings: readonly CurveReading[],
  limits: readonly DwellLimit[],
  context: CurveContext,
  unit: TemperatureUnit,
): LethalityExplained | undefined {
  const [limit] = limits;
  if (!limit || readings.length === 0) return undefined;
  const cooks = limits.map((own) => judgeCook(readings, own, context));
  const cook = cooks.find(({ by }) => by === 'nothing yet') ?? (cooks[0] as CookJudged);
  const rows = cook.by === 'nothing yet' ? cook.support.rowsInAll : [];
  return {
    judgedBy: cook.by,
    figures: [...byProbe(readings)].flatMap(([probe, own]) =>
      SHOWN.flatMap((set) => lethalityAtFloors(own, set).map((one) => ({ ...one, probe, found: lethalityFound(one) }))),
    ),
    rowsInAll: rows.map((row) => rowIn(row, unit)),
    conditions: [...(cook.by === 'nothing yet' ? cook.support.conditions : []), coded('d-and-z-vary'), cautions.model],
  };
}

export const drawLethality = (readings: readonly CurveReading[], named: readonly LethalitySet[]): LethalityDrawn[] =>
  [...new Map([...named, ...SHOWN].map((set) => [set.name, set])).values()].map((set) => {
    const probes = [...byProbe(readings)].map(([, own]) => ({
      own,
      least: lethalityAtFloors(own, set)[0] as Lethality,
    }));
    const [governs] = probes.sort((a, b) => a.least.atLeast - b.least.atLeast) as [(typeof probes)[number]];
    const line = lethalityOverTime(governs.own, set, POINTS);
    const capped = (index: number) => Math.min(line.log10[index] as number, MOST_TOLD);
    const points = Array.from(line.at, (at, index) => ({ at, log10: capped(index) }));
    return { name: nameOfSet(set), found: lethalityFound(governs.least), points };
  });
