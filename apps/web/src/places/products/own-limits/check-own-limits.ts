import { recordOwnLimits, type InputOf } from '@larderbook/contracts';
import { ownSet, type EditionBefore, type SetFault } from '@larderbook/haccp';
import { check, type FieldErrors } from '../../../api/check';
import type { OwnDraft, RowDraft } from './own-draft';
import { rowIdOf } from './row-id';
import type { SayOf } from '@larderbook/messages';

type Body = Omit<InputOf<typeof recordOwnLimits>, 'ownSetId'>;

/** Errors are keyed by field (`rows.0.title`); a fault without `row` is of the whole. */
export type Checked = {
  value?: Body;
  errors: FieldErrors;
  faults: { row?: number; because: SetFault['because'] }[];
};

/** The contract comes first, then the rules of every set. `before` is the edition that is replaced. */
export function checkOwnLimits(draft: OwnDraft, say: SayOf<'own-limits'>, before?: EditionBefore): Checked {
  const { ownSetId, replaces, title, edition, validFrom } = draft;
  const rows = withIds(draft.rows);
  const { value, errors } = check(recordOwnLimits.body, { replaces, title, edition, validFrom, rows });
  if (!value) return { errors: inWords(errors, draft.rows, say), faults: [] };

  const given = { ...value, id: ownSetId, rows: value.rows.map(({ rowId, ...row }) => ({ ...row, id: rowId })) };
  const judged = ownSet(given, before);
  if ('set' in judged) return { value, errors: {}, faults: [] };
  const faults = judged.faults.map(({ row, because }) => {
    const at = value.rows.findLastIndex(({ rowId }) => rowId === row);
    return at < 0 ? { because } : { row: at, because };
  });
  return { errors: {}, faults };
}

/** Every row gets an id; what was left empty is left out. */
function withIds(rows: readonly RowDraft[]) {
  const taken = new Set(rows.flatMap(({ rowId }) => rowId ?? []));
  return rows.map(({ key: _key, rowId, validUntil, note, ...row }) => {
    const own = rowId ?? rowIdOf(row.title, taken);
    taken.add(own);
    return { ...row, rowId: own, validUntil: validUntil || undefined, note: note || undefined };
  });
}

/** A row without figures says so, whatever the contract misses in them. */
function inWords(errors: FieldErrors, rows: readonly RowDraft[], say: SayOf<'own-limits'>): FieldErrors {
  const missing = rows.flatMap(({ limit }, i) => (limit ? [] : [[`rows.${i}.limit`, say('figures-missing')]]));
  return { ...errors, ...Object.fromEntries(missing) };
}
