import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import type { Tell } from '@larderbook/haccp';
import { isRunning } from '../next/next-thing';
import { foldReadings } from './fold-readings';
import type { SheetLine } from './sheet-line';
import type { RowSpan } from './stretch';

/** `by` (epoch ms) is absent when no time is set; while a temperature is held, it is when that has been long enough. */
export type Due = {
  id: string;
  controlPointId: string;
  name: string;
  stage: string;
  bound: string;
  by?: number;
  isHeld: boolean;
};

export type RowContent =
  | { kind: 'line'; line: SheetLine /** The next probe of the round begun above. */; continues?: boolean }
  | { kind: 'folded'; id: string; lines: SheetLine[] }
  | { kind: 'now' }
  | { kind: 'due'; due: Due };

/** From its own moment to that of the next row (epoch ms); `ruled` is its least height in ruled lines. */
export type SheetRow = RowContent & RowSpan & { ruled: number };

export type UnderWay = { now: number; isRunning: boolean; dues: Due[] };

export function sheetRows(
  lines: SheetLine[],
  { now, isRunning: runs, dues }: UnderWay,
  unfolded: ReadonlySet<string> = new Set(),
): SheetRow[] {
  const recorded = foldReadings(lines, unfolded).map((content) => ({ ...content, at: startOf(content) }));
  const coming = !runs
    ? []
    : [{ kind: 'now' as const, at: now }, ...dues.map((due) => ({ kind: 'due' as const, due, at: due.by ?? Infinity }))];
  const rows = [...recorded, ...coming].sort((a, b) => a.at - b.at);
  const last = Math.max(now, ...rows.map(({ at }) => (Number.isFinite(at) ? at : 0)));
  return rows.map(({ at, ...content }, i) => {
    const span = { from: Math.min(at, last), to: Math.min(rows[i + 1]?.at ?? at, last), before: rows[i - 1]?.at };
    const before = rows[i - 1];
    const continues = content.kind === 'line' && before?.kind === 'line' && isSameRound(before.line, content.line);
    return { ...content, ...span, ...(continues && { continues }), ruled: ruledLines(span.to - span.from) };
  });
}

const longestRound = 5 * 60_000;

/** One person reads probe after probe in the order of their names: that round is said once. */
const isSameRound = (before: SheetLine, line: SheetLine): boolean =>
  line.kind === 'reading' &&
  before.kind === 'reading' &&
  line.controlPointId === before.controlPointId &&
  (line.probe ?? '') > (before.probe ?? '') &&
  line.at - before.at <= longestRound &&
  line.who === before.who &&
  line.flags.join() === before.flags.join() &&
  line.corrects.length === 0 &&
  !before.deviation;

const startOf = (content: { kind: 'line'; line: SheetLine } | { kind: 'folded'; lines: SheetLine[] }): number =>
  content.kind === 'line' ? content.line.at : (content.lines[0]?.at ?? 0);

const msPerRuledLine = 20 * 60_000;
const [fewest, most] = [2, 6];

/** Time is to scale, one line for twenty minutes, between what the text needs and a page can spare. */
export const ruledLines = (ms: number): number => Math.max(fewest, Math.min(most, Math.ceil(ms / msPerRuledLine)));

export function underWay(lot: Lot, now: number, tell: Tell): UnderWay {
  const running = lot.controlPoints.filter(isRunning);
  return { now, isRunning: running.length > 0, dues: running.flatMap((point) => duesAt(point, tell)) };
}

const duesAt = ({ controlPoint: { controlPointId, name }, judged }: ControlPointOnLot, tell: Tell): Due[] =>
  judged.flatMap(({ limitId, limit, verdict }) => {
    const { running } = tell(verdict, limit);
    if (!running) return [];
    const { stage, bound, deadline, until } = running;
    return [
      {
        id: `${controlPointId} ${limitId}`,
        controlPointId,
        name,
        stage,
        bound,
        by: deadline ?? until,
        isHeld: deadline === undefined && until !== undefined,
      },
    ];
  });
