import type { CurveContext } from '../limits/curve-context';
import type { DwellLimit } from '../kinds/dwell/dwell-limit';
import { sayRow } from '../kinds/dwell/say-row';
import { judgeCook, type CookJudged } from '../lethality/judge-cook';
import type { Lethality } from '../lethality/lethality';
import { lethalityAtFloors } from '../lethality/lethality-at-floors';
import { lethalityOverTime } from '../lethality/lethality-over-time';
import type { LethalitySet } from '../lethality/lethality-set';
import { MOST_SAID, sayLethality } from '../lethality/say-lethality';
import { listeria70For2, salmonellaByTheMeatTable } from '../lethality/sets';
import type { TemperatureUnit } from '../quantity/temperature';
import { byProbe, type CurveReading } from '../thermal/curve';
import { cautions } from './cautions';

/** The sets a cook is shown with; the first is drawn first. */
const SHOWN: readonly LethalitySet[] = [salmonellaByTheMeatTable, listeria70For2];
/** As many points as a drawing can show. */
const POINTS = 300;

/** A figure of lethality with its words; `said` is what a screen shows, capped and in half logs. */
export type LethalityFigure = Lethality & { probe: string; said: string };

/** The lethality a cook adds up to: support for a process authority, and never a verdict. */
export type LethalityExplained = {
  label: string;
  /** What the printed table was met by: a row, a temperature that needs no time, or nothing yet. */
  judgedBy: CookJudged['by'];
  figures: LethalityFigure[];
  /** Printed rows whose time is there in all, though not without a break. */
  rowsInAll: string[];
  conditions: string[];
};

/** How lethality adds up over time by one set, of the probe that has the least; drawn no higher than `top`. */
export type LethalityDrawn = { name: string; said: string; points: { at: number; log10: number }[] };

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
    label: 'Support for a decision: needs a process authority',
    judgedBy: cook.by,
    figures: [...byProbe(readings)].flatMap(([probe, own]) =>
      SHOWN.flatMap((set) => lethalityAtFloors(own, set).map((one) => ({ ...one, probe, said: sayLethality(one) }))),
    ),
    rowsInAll: rows.map((row) => sayRow(row, unit)),
    conditions: [
      ...(cook.by === 'nothing yet' ? cook.support.conditions : []),
      'D and z were measured in other products; a factor of two to three is normal. Read them in half logs.',
      cautions.model,
    ],
  };
}

/** The lines of the panel under the curve: by the sets that limits name, and by the usual ones. */
export const drawLethality = (readings: readonly CurveReading[], named: readonly LethalitySet[]): LethalityDrawn[] =>
  [...new Map([...named, ...SHOWN].map((set) => [set.name, set])).values()].map((set) => {
    const probes = [...byProbe(readings)].map(([, own]) => ({
      own,
      least: lethalityAtFloors(own, set)[0] as Lethality,
    }));
    const [governs] = probes.sort((a, b) => a.least.atLeast - b.least.atLeast) as [(typeof probes)[number]];
    const line = lethalityOverTime(governs.own, set, POINTS);
    const capped = (index: number) => Math.min(line.log10[index] as number, MOST_SAID);
    const points = Array.from(line.at, (at, index) => ({ at, log10: capped(index) }));
    return { name: set.name, said: sayLethality(governs.least), points };
  });
