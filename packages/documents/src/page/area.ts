import type { Paper } from '../sheet-data';

/** In points (1/72 inch). Letter and A4 as ISO 216 and ANSI give them. */
export const papers: Record<Paper, { width: number; height: number }> = {
  Letter: { width: 612, height: 792 },
  A4: { width: 595.28, height: 841.89 },
};

/** Where things stand on a sheet, in points from its upper left corner. */
export type Area = {
  paper: { width: number; height: number };
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** The ruled margin line: what time it was stands left of it, what happened right of it. */
  margin: number;
  /** Where entries begin. */
  body: number;
};

const edge = 42;
const header = 74;
const footer = 64;
const beforeMarginLine = 8;
const afterMarginLine = 10;

export function areaOf(paper: Paper, turned: 'portrait' | 'landscape'): Area {
  const { width, height } = papers[paper];
  const size = turned === 'portrait' ? { width, height } : { width: height, height: width };
  const margin = edge + (turned === 'portrait' ? 66 : 60);
  return {
    paper: size,
    left: edge,
    right: size.width - edge,
    top: header,
    bottom: size.height - footer,
    margin,
    body: margin + afterMarginLine,
  };
}

/** The column left of the margin line, and the one right of it. */
export function marginColumn({ left, margin }: Area) {
  return { x: left, width: margin - left - beforeMarginLine };
}
export function bodyColumn({ body, right }: Area) {
  return { x: body, width: right - body };
}
