import { bodyColumn, marginColumn, type Area } from './area';
import type { Block } from './block';
import type { Pen } from './pen';
import { row, type Cell } from './row';
import { toTheRight, words, type Paragraph } from './words';

export type Fact = { label: string; value: string };

const blank = 14;

export function factColumns({ body, right }: Area) {
  const width = (right - body - 2 * blank) / 3;
  const at = (index: number) => ({ x: body + index * (width + blank), width });
  return [at(0), at(1), at(2)] as const;
}

export function facts(pen: Pen, area: Area, all: Fact[]): Block[] {
  const columns = factColumns(area);
  const rows: Block[] = [];
  for (let from = 0; from < all.length; from += columns.length) {
    const cells = columns.map((column, index): Cell => ({ ...column, paragraphs: factInWords(all[from + index]) }));
    rows.push(row(pen, cells, { above: 2, below: 5 }));
  }
  return rows;
}

function factInWords(fact: Fact | undefined): Paragraph[] {
  return fact ? [words('label', fact.label), words('body', fact.value)] : [];
}

/** The label stands in the margin. */
export function remark(pen: Pen, area: Area, label: string, ...paragraphs: Paragraph[]): Block {
  const cells = [
    { ...marginColumn(area), paragraphs: [toTheRight(words('label', label))] },
    { ...bodyColumn(area), paragraphs },
  ];
  return row(pen, cells, { above: 1, below: 2 });
}
