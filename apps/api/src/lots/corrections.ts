import { knownFlags } from '@larderbook/contracts';
import { madeBy, type PersonNames } from '../people/person-names';

type Row = {
  id: string;
  amendsId: string | null;
  reason: string;
  flags: string[];
  recordedBy: string;
  recordedAt: Date;
  takenAt: Date;
  station: string;
};

/**
 * What every row on a lot shows of itself: who, when, what was odd, and whether it corrects or was corrected. Both
 * stay.
 */
export function corrections(rows: readonly Row[], names: PersonNames) {
  const correctedBy = new Map(rows.flatMap(({ id, amendsId }) => (amendsId ? [[amendsId, id] as const] : [])));
  return (row: Row) => ({
    flags: knownFlags(row.flags),
    made: madeBy(row, names),
    amendedBy: correctedBy.get(row.id),
    amends: row.amendsId ?? undefined,
    reason: row.reason,
  });
}
