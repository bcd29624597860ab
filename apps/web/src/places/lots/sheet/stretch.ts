/** A span of time; instants in epoch ms. */
export type Span = { from: number; to: number };

/** Where something begins and ends in a row of the sheet: 0 is the row's upper rule, 1 its lower. */
export type Stretch = { top: number; bottom: number };

/**
 * The part of `span` that falls into a row, or nothing. Each row is drawn by itself, so that the time axis follows
 * whatever height its text needs. A row without duration (two entries of one minute) is inside or outside as a whole.
 */
export function stretchIn(row: Span, span: Span): Stretch | undefined {
  if (row.to <= row.from) return span.from <= row.from && row.to < span.to ? { top: 0, bottom: 1 } : undefined;
  const top = Math.max(0, placeIn(row, span.from));
  const bottom = Math.min(1, placeIn(row, span.to));
  return bottom > top ? { top, bottom } : undefined;
}

/** A row knows where the one above it begins, so that of several rows of one minute only the first begins anything. */
export type RowSpan = Span & { before?: number };

/** Whether something that begins at this instant begins in this row; in one without duration only at its own moment. */
export const beginsIn = ({ from, to, before }: RowSpan, at: number): boolean =>
  (at === from || (at > from && at < to)) && (before === undefined || before < at);

/** How far down a row an instant lies; below 0 and above 1 it is outside. */
export const placeIn = ({ from, to }: Span, at: number): number => (to <= from ? 0 : (at - from) / (to - from));
