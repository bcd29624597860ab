import type { Deviation } from '@larderbook/contracts';
import type { PersonNames } from '../shop/person-names';

type Signed = { recordedBy: string; recordedAt: Date };
type Row = Signed & { id: string; note: string; takenBack: (Signed & { reason: string }) | null };

/** Oldest first. */
export function showClosings({ closings }: { closings: Row[] }, names: PersonNames): Pick<Deviation, 'closing' | 'closingsTakenBack'> {
  const signed = ({ recordedBy, recordedAt }: Signed) => ({ by: names.get(recordedBy) ?? '', at: recordedAt.toISOString() });
  const shown = (row: Row) => ({ closingId: row.id, note: row.note, ...signed(row) });
  const counts = closings.find(({ takenBack }) => !takenBack);
  return {
    closing: counts && shown(counts),
    closingsTakenBack: closings.flatMap((row) => {
      if (!row.takenBack) return [];
      return [{ ...shown(row), takenBack: { how: 'taken back' as const, reason: row.takenBack.reason, ...signed(row.takenBack) } }];
    }),
  };
}
