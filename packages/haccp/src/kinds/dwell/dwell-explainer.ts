import type { StageDrawn } from '../../explain/drawing';
import { drawnFigure } from '../../explain/drawn-degrees';
import { governing } from '../../explain/governing';
import { kindDrawn } from '../../explain/kind-drawn';
import { lineAt } from '../../explain/line';
import { above, boundOf, sayPrinted } from '../../quantity/bound';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { Explainer, Governed } from '../explainer';
import { undrawn } from '../undrawn';
import type { DwellLimit, DwellRow } from './dwell-limit';
import { explainDwell } from './explain-dwell';
import { sayDuration } from '../../quantity/duration';
import type { Quantity } from '../../quantity/quantity';
import type { Running } from '../../limits/verdict';
import { sayRow } from './say-row';

export const dwellExplainer: Explainer<DwellLimit> = {
  ...undrawn,
  explain: (limit, told, { series, context, say }) => explainDwell(limit, told, governing(series.temperatures, told), context, say),
  lines: ({ rows }, unit, peak) => rowToDraw(rows, unit, peak).map((row) => lineAt(row.at, unit, `≥ ${sayRow(row, unit)}`)),
  stretches: (limit, own) => (own.verdict.running?.since === undefined ? heldAbove(limit, own) : runningHold(own)),
  lawsOfKill: () => [],
};

/** Of a table of rows the one that the curve could satisfy: the hottest it reached, or else the coldest. */
function rowToDraw(rows: readonly DwellRow[], unit: TemperatureUnit, peak: number): DwellRow[] {
  const ordered = [...rows].sort((a, b) => drawnFigure(a.at, unit) - drawnFigure(b.at, unit));
  const reached = ordered.filter(({ at }) => drawnFigure(at, unit) <= peak);
  return reached.length > 0 ? reached.slice(-1) : ordered.slice(0, 1);
}

function runningHold(own: Governed): StageDrawn[] {
  const { figures, since, until } = own.verdict.running as Running & { since: number };
  return [{ label: holdOf(figures as HoldFigures), startAt: since, endAt: undefined, deadline: until, kind: kindDrawn(own) }];
}

type HoldFigures = { at: Quantity; needed: Quantity };
const holdOf = ({ at, needed }: HoldFigures): string => `${at.value} ${at.unit} for ${sayDuration(Number(needed.value))}`;

/** The stretch in which the core stood at or above the lowest temperature of the table. */
function heldAbove({ rows }: DwellLimit, own: Governed): StageDrawn[] {
  const [coldest] = [...rows].sort((a, b) => boundOf(a.at)['°F'] - boundOf(b.at)['°F']);
  if (!coldest) return [];
  const bound = boundOf(coldest.at);
  const hot = own.readings.filter(({ temperature }) => above(temperature, bound) >= 0);
  const [first, last] = [hot[0], hot.at(-1)];
  if (!first || !last) return [];
  return [{ label: `≥ ${sayPrinted(coldest.at, own.unit)}`, startAt: first.at, endAt: last.at, kind: kindDrawn(own) }];
}
