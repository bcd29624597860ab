/** published/README.md explains each part. Figures are text as printed and are read exactly. */
export type SetFile = SheetFile & { set: SetHead };
export type SetHead = SheetHead & { jurisdiction: string; edition: string; validFrom: string; replaces?: string; isPartial?: boolean };

/** Tables that sets take over. Every set is one. */
export type SheetFile = { set: SheetHead; words: Words; [table: string]: SheetHead | Words | Table | TableAsIn };

export type SheetHead = {
  id: string;
  /** For reviewers of the file; no code reads them. */
  remarks: string[];
  works?: Record<string, Work>;
  /** Products that rows name together. */
  groups?: Record<string, string[]>;
  /** Of a lot or a plan, before rows may be used. */
  asks?: Record<string, Asked>;
  /** Holding times, too long for a cell. */
  holds?: Record<string, Table>;
};

export type Work = { citation: string; edition: string; url?: string; validFrom: string; force: string };

export type Asked = { kind: string; least?: string; per?: string; formula?: string };

/** For people, by id; apart from the figures. */
export type Words = { title: string; asks?: Record<string, string>; rows?: Record<string, RowWords> };
export type RowWords = { title: string; note?: string; statement?: string };

export type Table = { each?: Cells; columns: string[]; rows: string[][] };
/** `but` replaces these cells in every row. */
export type TableAsIn = { 'as in': string; but?: Cells };

/** By columns. An absent or empty cell says nothing. */
export type Cells = { [column: string]: string };

export const rowsOf = ({ each, columns, rows }: Table): Cells[] =>
  rows.map((row) => ({ ...each, ...Object.fromEntries(columns.map((column, index) => [column, row[index] as string])) }));

export const cellOf = (cells: Cells, column: string): string => cells[column] ?? '';

/** "cooked meat; patties". */
export const listOf = (cells: Cells, column: string): string[] => {
  const cell = cellOf(cells, column);
  return cell === '' ? [] : cell.split('; ');
};
