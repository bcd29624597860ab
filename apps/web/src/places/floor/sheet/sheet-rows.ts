import type { Lot } from '@larderbook/contracts';
import { isRunning } from '../next/next-thing';
import { foldReadings } from './fold-readings';
import type { SheetLine } from './sheet-line';

/** A bound that a running stage has still to reach; `by` epoch ms when a time is set. */
export type Due = { id: string; controlPointId: string; name: string; stage: string; bound: string; by?: number };

export type RowContent =
  | { kind: 'line'; line: SheetLine }
  | { kind: 'folded'; id: string; lines: SheetLine[] }
  | { kind: 'now' }
  | { kind: 'due'; due: Due };

/** One row of the sheet, from its own moment to that of the next row (epoch ms); `ruled` is its least height in ruled lines. */
export type SheetRow = RowContent & { from: number; to: number; ruled: number };

/** The rows of the sheet down the page: what was recorded, where we are now, and what is still to be reached. */
export function sheetRows(lines: SheetLine[], dues: Due[], now: number, unfolded: ReadonlySet<string> = new Set()): SheetRow[] {
  const recorded = foldReadings(lines, unfolded).map((content) => ({ ...content, at: startOf(content) }));
  const coming = dues.length === 0 ? [] : [{ kind: 'now' as const, at: now }, ...dues.map((due) => ({ kind: 'due' as const, due, at: due.by ?? Infinity }))];
  const rows = [...recorded, ...coming].sort((a, b) => a.at - b.at);
  const last = Math.max(now, ...rows.map(({ at }) => (Number.isFinite(at) ? at : 0)));
  return rows.map(({ at, ...content }, i) => {
    const span = { from: Math.min(at, last), to: Math.min(rows[i + 1]?.at ?? at, last) };
    return { ...content, ...span, ruled: ruledLines(span.to - span.from) };
  });
}

const startOf = (content: { kind: 'line'; line: SheetLine } | { kind: 'folded'; lines: SheetLine[] }): number =>
  content.kind === 'line' ? content.line.at : (content.lines[0]?.at ?? 0);

const msPerRuledLine = 20 * 60_000;
const [fewest, most] = [2, 9];

/** Time is to scale, one ruled line for twenty minutes, between what the text needs and what a page can spare. */
export const ruledLines = (ms: number): number => Math.max(fewest, Math.min(most, Math.ceil(ms / msPerRuledLine)));

/** The bounds that the running stages of a lot have still to reach. */
export function duesOf(lot: Lot): Due[] {
  return lot.controlPoints.filter(isRunning).flatMap(({ controlPoint, judged }) =>
    judged.flatMap(({ limitId, verdict: { running } }) =>
      running ? [{ id: `${controlPoint.controlPointId} ${limitId}`, controlPointId: controlPoint.controlPointId, name: controlPoint.name, stage: running.stage, bound: running.bound, by: running.deadline }] : [],
    ),
  );
}
