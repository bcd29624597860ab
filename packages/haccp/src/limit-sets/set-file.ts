/**
 * A published set as its data file holds it: published/README.md says what each part means. Every figure is text as its
 * source prints it and is read exactly.
 */
export type SetFile = SheetFile & { set: SetHead };
export type SetHead = SheetHead & { jurisdiction: string; edition: string; validFrom: string; replaces?: string; isPartial?: boolean };

/** Tables that sets take over, with what their rows rest on. Every set is one. */
export type SheetFile = { set: SheetHead; words: Words; [table: string]: SheetHead | Words | Table | TableAsIn };

export type SheetHead = {
  id: string;
  /** For whoever reviews the file; nothing reads them. */
  remarks: string[];
  works?: Record<string, Work>;
  /** Products that rows name together. */
  groups?: Record<string, string[]>;
  /** What rows ask of a lot or a plan before they may be used. */
  asks?: Record<string, Asked>;
  /** Tables of holding times that are too long for a cell. */
  holds?: Record<string, Table>;
};

/** What rows are taken from. */
export type Work = { citation: string; edition: string; url?: string; validFrom: string; force: string };

export type Asked = { kind: string; least?: string; per?: string; formula?: string };

/** What people read, by the id of what it is about; kept apart from the figures. */
export type Words = { title: string; asks?: Record<string, string>; rows?: Record<string, RowWords> };
export type RowWords = { title: string; note?: string; statement?: string };

export type Table = { each?: Cells; columns: string[]; rows: string[][] };
/** The table of the same name in another set; `but` takes the place of these cells in every row. */
export type TableAsIn = { 'as in': string; but?: Cells };

/** One row of a table by its columns. An absent or empty cell says nothing. */
export type Cells = { [column: string]: string };

export const rowsOf = ({ each, columns, rows }: Table): Cells[] =>
  rows.map((row) => ({ ...each, ...Object.fromEntries(columns.map((column, index) => [column, row[index] as string])) }));

export const cellOf = (cells: Cells, column: string): string => cells[column] ?? '';

/** The entries of a cell that names several: "cooked meat; patties". */
export const listOf = (cells: Cells, column: string): string[] => {
  const cell = cellOf(cells, column);
  return cell === '' ? [] : cell.split('; ');
};
