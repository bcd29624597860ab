/**
 * What became of a column that texts of the ledger name, as `table.column`: where its value stands now, in the row of the
 * same id. A migration that renames a column or moves it to another table adds it here; a name is never used again.
 */
export type MovedColumns = Readonly<Record<string, { table: string; column: string }>>;

export const movedColumns: MovedColumns = {};
