/**
 * A limit of many rows by its first and its last, so that the last value and the verdict stay in sight beside the
 * keypad: "≥ 106 h at or below 0 °F … 30 min at or below -35 °F, at the centre; one of 8 rows". Any other as it is.
 */
export function inShort(limit: string): string {
  const rows = limit.split(/ or (?=\d)/);
  return rows.length < 4 ? limit : `${rows[0]} … ${rows.at(-1)}; one of ${rows.length} rows`;
}
