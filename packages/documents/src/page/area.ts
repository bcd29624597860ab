import type { Paper } from '../sheet-data';

/** In points (1/72 inch). ANSI defines Letter and ISO 216 defines A4. */
export const papers: Record<Paper, { width: number; height: number }> = {
  Letter: { width: 612, height: 792 },
  A4: { width: 595.28, height: 841.89 },
};

/** Points from the upper left corner. */
export type Area = {
  paper: { width: number; height: number };
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** Times stand left of the ruled margin line, entries right of it. */
  margin: number;
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

export function marginColumn({ left, margin }: Area) {
  return { x: left, width: margin - left - beforeMarginLine };
}
export function bodyColumn({ body, right }: Area) {
  return { x: body, width: right - body };
}
