import type { Block } from './block';
import type { Line } from './break-lines';
import type { Pen } from './pen';
import type { Role } from './tags';
import { styles, type LineName } from './theme';
import type { Paragraph } from './words';

export type Cell = { x: number; width: number; paragraphs: Paragraph[] };
type LaidCell = { x: number; width: number; lines: Line[] };
type Edges = {
  above: number;
  below: number;
  under?: { line: LineName; from: number; to: number };
  /** For a reader that speaks; "P" by default. */
  role?: Role;
};

/** First lines share one baseline. */
export function row(pen: Pen, cells: Cell[], edges: Edges): Block {
  const laid = cells.map(({ x, width, paragraphs }) => ({ x, width, lines: paragraphs.flatMap((paragraph) => pen.lay(paragraph, width)) }));
  return laidRow(pen, laid, edges);
}

function laidRow(pen: Pen, cells: LaidCell[], edges: Edges): Block {
  const first = Math.max(0, ...cells.map(({ lines }) => baseline(pen, lines)));
  const tops = cells.map(({ lines }) => (lines.length ? first - baseline(pen, lines) : 0));
  const deepest = Math.max(0, ...cells.map(({ lines }, index) => (tops[index] ?? 0) + heightOf(lines)));
  const height = edges.above + deepest + edges.below;
  return {
    height,
    draw(top) {
      drawCells(
        pen,
        edges.role,
        cells.map((cell, index) => ({ cell, top: top + edges.above + (tops[index] ?? 0) })),
      );
      const { under } = edges;
      if (under) pen.tags.artifact(() => pen.rule(under.from, top + height, under.to, top + height, under.line));
    },
    split: (room) => splitRow(pen, cells, edges, room),
  };
}

function drawCells(pen: Pen, role: Role = 'P', cells: { cell: LaidCell; top: number }[]): void {
  const drawAll = () => {
    for (const { cell, top } of cells) drawCell(pen, cell, top);
  };
  if (role !== 'TH' && role !== 'TD') return pen.tags.element(role, drawAll);
  pen.tags.group('TR', () => {
    for (const { cell, top } of cells) pen.tags.element(role, () => drawCell(pen, cell, top));
  });
}

function drawCell(pen: Pen, { x, width, lines }: LaidCell, top: number): void {
  let y = top;
  for (const line of lines) {
    pen.set(line, x, y, width);
    y += styles[line.style].leading;
  }
}

function splitRow(pen: Pen, cells: LaidCell[], edges: Edges, room: number): [Block, Block] | undefined {
  const budget = room - edges.above - edges.below;
  const counts = cells.map(({ lines }) => linesWithin(lines, budget));
  if (counts.every((count) => count === 0)) return undefined;
  const part = (from: (index: number) => number, to: (index: number) => number | undefined) =>
    cells.map((cell, index) => ({ ...cell, lines: cell.lines.slice(from(index), to(index)) }));
  return [
    laidRow(
      pen,
      part(
        () => 0,
        (index) => counts[index],
      ),
      { ...edges, under: undefined },
    ),
    laidRow(
      pen,
      part(
        (index) => counts[index] ?? 0,
        () => undefined,
      ),
      edges,
    ),
  ];
}

function linesWithin(lines: Line[], budget: number): number {
  let count = 0;
  for (let used = 0; count < lines.length; count++) {
    used += styles[lines[count]?.style ?? 'body'].leading;
    if (used > budget) break;
  }
  return count;
}

const heightOf = (lines: Line[]) => lines.reduce((sum, { style }) => sum + styles[style].leading, 0);
const baseline = (pen: Pen, [first]: Line[]) => (first ? pen.baselineOf(first.style) : 0);
