import type { SayOf } from '@larderbook/messages';

/**
 * Shows a long table by its ends, so that value and verdict stay in sight: "≥ 106 h at or below 0 °F … 30 min at or
 * below -35 °F, at the centre; one of 8 rows".
 */
export function inShort(limit: string, say: SayOf<'lot-forms'>): string {
  const rows = limit.split(/ or (?=\d)/);
  const [first = '', last = ''] = [rows[0], rows.at(-1)];
  return rows.length < 4 ? limit : say('one-of-rows', { first, last, rows: String(rows.length) });
}
