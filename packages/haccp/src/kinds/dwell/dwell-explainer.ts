import type { StageDrawn } from '../../explain/drawing';
import { drawnFigure } from '../../explain/drawn-degrees';
import { governing } from '../../explain/governing';
import { kindDrawn } from '../../explain/kind-drawn';
import { lineAt } from '../../explain/line';
import { above, boundOf, raised } from '../../quantity/bound';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { Explainer, Governed } from '../explainer';
import { undrawn } from '../undrawn';
import type { DwellLimit, DwellRow } from './dwell-limit';
import { explainDwell } from './explain-dwell';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import { errorOf } from '../../limits/curve-context';
import { printedAllowing } from '../../quantity/printed-allowing';
import type { Running } from '../../limits/verdict';
import { rowIn } from './row-in';

export const dwellExplainer: Explainer<DwellLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context }) => explainDwell(limit, governing(series.temperatures, verdict), context),
  lines: ({ rows }, unit, peak) => rowToDraw(rows, unit, peak).map((row) => lineAt(row.at, unit, sum`≥ ${rowIn(row, unit)}`)),
  stretches: (limit, own) => (own.verdict.running?.since === undefined ? heldAbove(limit, own) : runningHold(own)),
  lawsOfKill: () => [],
};

/** The hottest row the curve reached, else the coldest. */
function rowToDraw(rows: readonly DwellRow[], unit: TemperatureUnit, peak: number): DwellRow[] {
  const ordered = [...rows].sort((a, b) => drawnFigure(a.at, unit) - drawnFigure(b.at, unit));
  const reached = ordered.filter(({ at }) => drawnFigure(at, unit) <= peak);
  return reached.length > 0 ? reached.slice(-1) : ordered.slice(0, 1);
}

function runningHold(own: Governed): StageDrawn[] {
  const { figures, since, until } = own.verdict.running as Running & { since: number };
  return [{ label: coded('dwell-hold.bound', figures), startAt: since, endAt: undefined, deadline: until, kind: kindDrawn(own) }];
}

function heldAbove({ rows }: DwellLimit, own: Governed): StageDrawn[] {
  const [coldest] = [...rows].sort((a, b) => boundOf(a.at)['°F'] - boundOf(b.at)['°F']);
  if (!coldest) return [];
  const error = errorOf(own.context) as number; // otherwise nothing was judged
  const bound = raised(boundOf(coldest.at), error);
  const hot = own.readings.filter(({ temperature }) => above(temperature, bound) >= 0);
  const [first, last] = [hot[0], hot.at(-1)];
  if (!first || !last) return [];
  return [{ label: sum`≥ ${printedAllowing(coldest.at, own.unit, error)}`, startAt: first.at, endAt: last.at, kind: kindDrawn(own) }];
}
