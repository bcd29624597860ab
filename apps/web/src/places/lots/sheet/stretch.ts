/** Instants in epoch ms. */
export type Span = { from: number; to: number };

/** 0 is the row's upper rule, 1 its lower. */
export type Stretch = { top: number; bottom: number };

/**
 * Each row is drawn by itself, so that the time axis follows the height of its text. A row without duration is inside
 * or outside as a whole.
 */
export function stretchIn(row: Span, span: Span): Stretch | undefined {
  if (row.to <= row.from) return span.from <= row.from && row.to < span.to ? { top: 0, bottom: 1 } : undefined;
  const top = Math.max(0, placeIn(row, span.from));
  const bottom = Math.min(1, placeIn(row, span.to));
  return bottom > top ? { top, bottom } : undefined;
}

/** `before` is where the row above begins: of several rows of one minute only the first begins anything. */
export type RowSpan = Span & { before?: number };

/** In a row without duration only at its own moment. */
export const beginsIn = ({ from, to, before }: RowSpan, at: number): boolean =>
  (at === from || (at > from && at < to)) && (before === undefined || before < at);

/** 0 to 1 inside the row. */
export const placeIn = ({ from, to }: Span, at: number): number => (to <= from ? 0 : (at - from) / (to - from));
