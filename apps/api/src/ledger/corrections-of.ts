import type { Correction, Said } from '@larderbook/contracts';
import { canonicalJson, type Phrase, type Quantity } from '@larderbook/haccp';
import { named } from '../platform/account';

export type LastingRow = {
  id: string;
  seq: bigint;
  amendsId: string | null;
  firstId: string | null;
  amendReason: string | null;
  voided: boolean | null;
  recordedBy: string;
  recordedAt: Date;
  station: string;
};

export type Told = { what: Phrase; says: readonly (readonly [field: Phrase, says: Said | undefined])[]; controlPointId?: string };

type MadeBy = (row: LastingRow) => Correction['made'];

/** In the order of the ledger. Rows may come in any. */
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
    .sort((a, b) => Number(a.row.seq - b.row.seq))
    .map(({ row, before }) => {
      const { what, controlPointId } = tell(row);
      const common = { correctionId: row.id, about, id: row.firstId ?? row.id, what, controlPointId };
      const changes = changesFrom(tell(before).says, row.voided ? [] : tell(row).says);
      return { ...common, voided: row.voided === true, reason: row.amendReason || named('finished-anew'), made: madeBy(row), changes };
    });
}

function changesFrom(before: Told['says'], after: Told['says']): Correction['changes'] {
  const [said, says] = [before, after].map((fields) => new Map(fields.map(([field, value]) => [canonicalJson(field), value])));
  const fields = new Map([...before, ...after].map(([field]) => [canonicalJson(field), field]));
  return [...fields].flatMap(([key, what]) => {
    const [was, is] = [said?.get(key), says?.get(key)];
    return canonicalJson(was ?? null) === canonicalJson(is ?? null) ? [] : [{ what, before: was, after: is }];
  });
}

export const typed = (text: string | null): string | undefined => text || undefined;
export const momentOf = (at: Date): Said => ({ at: at.getTime() });
export const dayOf = (day: Date | null): Said | undefined => (day ? { day: day.toISOString().slice(0, 10) } : undefined);
export const figureOf = (value: { toString(): string } | null, unit: string | null): Said | undefined =>
  value && unit ? { value: value.toString(), unit: unit as Quantity['unit'] } : undefined;
