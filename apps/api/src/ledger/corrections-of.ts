import type { Correction } from '@larderbook/contracts';

export type LastingRow = {
  id: string;
  amendsId: string | null;
  firstId: string | null;
  amendReason: string | null;
  voided: boolean | null;
  recordedBy: string;
  recordedAt: Date;
  station: string;
};

/** A moment stays an instant: whoever shows it knows the time zone. */
export type Told = { what: string; says: Record<string, string | Date>; controlPointId?: string };

type MadeBy = (row: LastingRow) => Correction['made'];

/** Oldest first. Rows may come in any order. */
export function correctionsOf<Row extends LastingRow>(
  about: Correction['about'],
  rows: readonly Row[],
  madeBy: MadeBy,
  tell: (row: Row) => Told,
): Correction[] {
  const byId = new Map(rows.map((row) => [row.id, row]));
  return rows
    .flatMap((row) => {
      const before = row.amendsId ? byId.get(row.amendsId) : undefined;
      return before ? [{ row, before }] : [];
    })
    .sort((a, b) => a.row.recordedAt.getTime() - b.row.recordedAt.getTime())
    .map(({ row, before }) => {
      const { what, controlPointId } = tell(row);
      const common = { correctionId: row.id, about, id: row.firstId ?? row.id, what, controlPointId };
      const changes = changesFrom(tell(before).says, row.voided ? {} : tell(row).says);
      return { ...common, voided: row.voided === true, reason: row.amendReason ?? '', made: madeBy(row), changes };
    });
}

function changesFrom(before: Told['says'], after: Told['says']): Correction['changes'] {
  const fields = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return fields.flatMap((what) => {
    const [was, is] = [textOf(before[what]), textOf(after[what])];
    if (was === is) return [];
    return [{ what, before: was, after: is, isMoment: before[what] instanceof Date || after[what] instanceof Date }];
  });
}

const textOf = (said: string | Date | undefined): string => (said instanceof Date ? said.toISOString() : (said ?? ''));
