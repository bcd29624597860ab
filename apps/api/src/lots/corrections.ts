import { knownFlags } from '@larderbook/contracts';
import { flagsNow, type ChecksOf } from './instrument-flags';
import { madeBy, type PersonNames } from '../shop/person-names';

type Row = {
  id: string;
  amendsId: string | null;
  voided: boolean | null;
  reason: string;
  flags: string[];
  recordedBy: string;
  recordedAt: Date;
  takenAt: Date;
  station: string;
  instrumentId?: string | null;
};

export function corrections(rows: readonly Row[], names: PersonNames, checks: ReadonlyMap<string, ChecksOf> = new Map()) {
  const correctedBy = new Map(rows.flatMap((row) => (row.amendsId ? [[row.amendsId, row] as const] : [])));
  return (row: Row) => {
    const later = correctedBy.get(row.id);
    const { takenAt: _, ...entered } = later ?? row;
    return {
      flags: knownFlags(flagsNow({ ...row, instrumentId: row.instrumentId ?? null }, checks)),
      made: madeBy(row, names),
      amendedBy: later?.id,
      amends: row.amendsId ?? undefined,
      reason: row.reason,
      voided: later?.voided ? { reason: later.reason, made: madeBy(entered, names) } : undefined,
    };
  };
}

/** A voiding row is told at the row it voids. */
export const listed = <R extends { voided: boolean | null }>(rows: readonly R[]): R[] => rows.filter(({ voided }) => !voided);
